import { useMemo } from 'preact/hooks';
import { useNow } from '../../app/now.ts';
import { routeTo } from '../../app/routes.ts';
import { seconds } from '../../core/answer/quantity.ts';
import { writeDraft } from '../../store/drafts.ts';
import { Amount } from '../../ui/amount.tsx';
import { clockTime } from '../../ui/clock-time.ts';
import { day } from '../../ui/day.ts';
import { Say } from '../../ui/say.tsx';
import { placeKey } from '../mill/place-key.ts';
import type { BenchRead } from './read-bench.ts';
import { type Answer, type Later, whatNow } from './what-now.ts';

interface Props {
  bench: BenchRead;
  later: Later | undefined;
}

/** What now: the one thing large, then what else can be done, what waits and what is missing. */
export function AllAnswers(props: Props) {
  return props.bench.timers.length > 0 ? <OnTheClock {...props} /> : <Answers {...props} now={Date.now()} />;
}

const OnTheClock = (props: Props) => <Answers {...props} now={useNow()} />;

function Answers({ bench, later, now }: Props & { now: number }) {
  const ended = bench.timers.filter(({ endsAt }) => endsAt <= now).length;
  // Between the ends of timers only the clock moves.
  const { now: toDo, waits, missing } = useMemo(() => whatNow(bench, now, later), [bench, later, ended]);
  const [first, ...others] = [...toDo, ...waits];
  const rest = Math.max(0, toDo.length - 1);
  return (
    <>
      {first && <Way to={first} now={now} class={toDo.length > 0 ? 'answer now' : 'answer wait'} what="figure words" />}
      <List title="Also now" look="now" of={others.slice(0, rest)} now={now} />
      <List title="Waiting" look="wait" of={others.slice(rest)} now={now} />
      <List title="Missing" look="" of={missing} now={now} />
    </>
  );
}

function List({ title, look, of, now }: { title: string; look: string; of: readonly Answer[]; now: number }) {
  if (of.length === 0) return null;
  return (
    <section aria-label={title}>
      <h2>{title}</h2>
      <ul class={`rows ${look}`}>
        {of.map((one) => (
          <li>
            <Way to={one} now={now} class="next" what="what" />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** An answer, and the way to where it is done; a run opens at its step. */
function Way({ to, now, what, ...rest }: { to: Answer; now: number; class: string; what: string }) {
  const { screen, id, step } = to;
  return (
    <a href={routeTo(screen, id)} onClick={() => step && void writeDraft(placeKey(id), step)} {...rest}>
      <span class={what}>
        <Say phrase={to.what} />
      </span>
      <span class="soft">
        {to.of}
        {(to.machine ?? to.until) !== undefined && ' · '}
        <Where of={to} now={now} />
      </span>
    </a>
  );
}

/** At which machine, with how much wood; or until when. */
function Where({ of: { machine, ready, until, by, about }, now }: { of: Answer; now: number }) {
  if (machine)
    return (
      <>
        at the {machine}, {ready} ready
      </>
    );
  if (until === undefined) return null;
  const left = Math.round((until - now) / 1000);
  return left > 0 ? (
    <>
      until <b class="nowrap">{about ? `about ${day(until)}` : clockTime(until, now)}</b>
      {!about && (
        <>
          , <Amount of={seconds(left)} /> left
        </>
      )}
    </>
  ) : (
    <>
      time up <Amount of={seconds(-left)} /> ago
      {by !== undefined && (
        <>
          , at the latest by <b class="nowrap">{clockTime(by, now)}</b>
        </>
      )}
    </>
  );
}
