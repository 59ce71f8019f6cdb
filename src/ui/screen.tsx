import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { TriangleMark } from './marks.tsx';

interface Props {
  /** The one question that this screen answers. */
  question: string;
  /** Where in the job this is, and for which piece. */
  kicker?: ComponentChildren;
  /** What the thumb does next; stands in the foot. */
  action?: ComponentChildren;
  /** The home screen has no way home. */
  home?: boolean;
  children: ComponentChildren;
}

/** One screen: its question, its body, and a foot in reach of the thumb. */
export function Screen({ question, kicker, action, home = false, children }: Props) {
  useEffect(() => {
    document.title = home ? 'Boardwright' : `${question} · Boardwright`;
  }, [question, home]);
  return (
    <div class="screen">
      <header>
        {kicker && <p class="kicker">{kicker}</p>}
        <h1>{question}</h1>
      </header>
      <ScaleEdge />
      <main id="main" tabIndex={-1}>
        {children}
      </main>
      {(action || !home) && (
        <nav class={home ? 'foot places' : 'foot'} aria-label={home ? 'Places' : 'Actions'}>
          <div>
            {!home && (
              <a class="button big" href="#/">
                <TriangleMark /> Bench
              </a>
            )}
            {action}
          </div>
        </nav>
      )}
    </div>
  );
}

/** The marks of a rule, from sixteenths of an inch to inches: how far apart, and how high. */
const marks = [
  [6, 2.5],
  [12, 4],
  [24, 6],
  [48, 8],
  [96, 10],
] as const;

/** A graduated edge, as on the rule that lies beside the work. */
const ScaleEdge = () => (
  <svg class="scale-edge" stroke="currentColor" aria-hidden="true">
    <path d="M0 .5h4000" />
    {marks.map(([apart, high]) => (
      <path d={`M0 ${high / 2}h4000`} stroke-width={high} stroke-dasharray={`1 ${apart - 1}`} />
    ))}
  </svg>
);
