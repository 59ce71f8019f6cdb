import { badInstant } from '../answer/bad-instant.ts';
import { phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { seconds } from '../answer/quantity.ts';
import type { GluePhase } from './glue-up.ts';

export interface PhaseAt {
  /** The phase to show large: the first that is not over; `undefined` once the joint has its full strength. */
  readonly phase: GluePhase | undefined;
  /** Seconds until its end; below 0 since it was missed. */
  readonly left: number;
}

/**
 * Which phase a glue-up is in, and how long it still runs or how long ago it ended.
 *
 * A phase stays current after its time, as overdue, until the maker says that it is over; full strength comes by itself.
 *
 * @param phases in order; instants in ms since the epoch
 * @param now ms since the epoch
 * @returns the current phase, and the seconds left of it, below 0 when it is overdue
 * @valid any number of phases
 * @errors `now` before the first phase: the clock was set back
 * @example phaseAt(glueUp(findAdhesive('PVA, interior').seconds, { startedAt: 0 }).phases, 240_000) // => { left: 60 }
 * @source arithmetic
 */
export function phaseAt(phases: readonly GluePhase[], now: number): Outcome<PhaseAt> {
  const bad = badInstant('now', 'The clock', now);
  if (bad) return bad;
  const early = ((phases[0]?.from ?? now) - now) / 1000;
  if (early > 0) return problem('now', phrase`The clock shows ${seconds(early)} before the start: set it right.`);
  const phase = phases.find(({ id, over, until }) => !over && (id !== 'cure' || until > now));
  return { phase, left: phase ? (phase.until - now) / 1000 : 0 };
}
