import { badInstant } from '../answer/bad-instant.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { seconds } from '../answer/quantity.ts';

/** What the look at the clock needs of a phase; a coat's wait serves as well as a glue-up's. Instants in ms since the epoch. */
export interface Timed {
  readonly title: string;
  /** Ends when the maker says so, and is overdue until then; or by itself, and makes room for the next. */
  readonly endedBy: 'maker' | 'clock';
  readonly from: number;
  readonly until: number;
  readonly over: boolean;
}

export interface PhaseAt<T extends Timed> {
  /** The phase to show large: the first that is not over and either runs or was missed; `undefined` when all is done. */
  readonly phase: T | undefined;
  /** Until its end; 0 when past it. */
  readonly remainingSeconds: number;
  /** Since its end; 0 before it. */
  readonly overdueSeconds: number;
  readonly said: Phrase;
}

/**
 * Which phase a glue-up is in, and how long it still runs or how long ago it ended.
 *
 * A phase that the maker ends stays current after its time, as overdue, until it is ticked; one that the clock ends
 * makes room for the next.
 *
 * @param phases in order; instants in ms since the epoch
 * @param now ms since the epoch
 * @returns the current phase, seconds remaining or overdue, and a sentence for the screen
 * @valid any number of phases; after the last has ended it stays current until ticked
 * @errors no phases; `now` before the first phase: the clock was set back
 * @example phaseAt([{ title: 'Open time', endedBy: 'maker', from: 0, until: 300_000, over: false }], 240_000)
 *   // => { remainingSeconds: 60, overdueSeconds: 0 }
 * @source arithmetic
 */
export function phaseAt<T extends Timed>(phases: readonly T[], now: number): Outcome<PhaseAt<T>> {
  const bad = badInstant('now', 'The clock', now);
  if (bad) return bad;
  const [first] = phases;
  if (!first) return problem('phases', 'There is nothing to wait for.');
  if (now < first.from)
    return problem('now', 'The clock shows {before} before the start: set it right.', {
      before: seconds((first.from - now) / 1000),
    });

  const phase = phases.find(
    ({ over, endedBy, until }, index) => !over && !(endedBy === 'clock' && now >= until && phases[index + 1]),
  );
  if (!phase) return { phase: undefined, remainingSeconds: 0, overdueSeconds: 0, said: phrase('All done.') };
  const remainingSeconds = Math.max(0, (phase.until - now) / 1000);
  const overdueSeconds = Math.max(0, (now - phase.until) / 1000);
  const said = phrase(`${phase.title}: ${overdueSeconds > 0 ? 'ended {time} ago' : '{time} left'}.`, {
    time: seconds(overdueSeconds || remainingSeconds),
  });
  return { phase, remainingSeconds, overdueSeconds, said };
}
