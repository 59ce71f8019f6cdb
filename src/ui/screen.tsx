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

const ticks = [...Array(17).keys()].map((sixteenth) => {
  const height =
    sixteenth % 16 === 0 ? 10 : sixteenth % 8 === 0 ? 8 : sixteenth % 4 === 0 ? 6 : sixteenth % 2 === 0 ? 4 : 2.5;
  return `M${sixteenth * 6 + 0.5} 0v${height}`;
});

/** A graduated edge, as on the rule that lies beside the work. */
function ScaleEdge() {
  return (
    <svg class="scale-edge" aria-hidden="true">
      <defs>
        <pattern id="scale-edge" width="96" height="10" patternUnits="userSpaceOnUse">
          <path d={ticks.join('')} stroke="currentColor" fill="none" />
        </pattern>
      </defs>
      <path d="M0 .5h4000" stroke="currentColor" />
      <rect width="100%" height="10" fill="url(#scale-edge)" />
    </svg>
  );
}
