import { firstBad, type NumberCheck } from '../answer/bad-number.ts';
import type { Outcome } from '../answer/problem.ts';

/** The parts of the work that are timed apart: m2 spread, seams closed, clamps set. */
export type Lap = 'spread' | 'close' | 'clamp';

/** How fast one maker works: seconds to spread 1 m2, to bring one seam together, to set and tighten one clamp. */
export type Pace = Readonly<Record<Lap, number>>;

/** Unhurried work by one person with a brush, until a dry run says better: an assumption. */
export const usualPace: Pace = { spread: 1800, close: 20, clamp: 15 };

/** All seconds that one part of the work has taken so far, and how much was done in them. */
export interface Timed {
  readonly seconds: number;
  readonly count: number;
}

/**
 * The maker's pace from all runs timed so far: for each part of the work all seconds over all that was done in them,
 * so that a large run counts for more than a small one.
 *
 * @param timed seconds; m2 spread, seams closed, clamps set. A part that was never timed is left out
 * @returns seconds per m2 spread, per seam closed, per clamp set; the usual pace where nothing was timed
 * @valid runs like the work to come; a dry run without glue flatters the spreading
 * @errors no time, or a time for nothing done
 * @example learnPace({ spread: { seconds: 600, count: 0.4 } }) // => { spread: 1500.0, close: 20 }
 * @source ratio estimate; an assumption of this app
 */
export function learnPace(timed: Readonly<Partial<Record<Lap, Timed>>>): Outcome<Pace> {
  const laps = Object.entries(timed);
  const bad = firstBad(
    laps.flatMap(([lap, { seconds, count }]): NumberCheck[] => [
      [`${lap}.seconds`, 'The lap', seconds, 'seconds', { above: 0 }],
      [`${lap}.count`, 'What was done in it', count, 'count', { above: 0 }],
    ]),
  );
  return (
    bad ?? { ...usualPace, ...Object.fromEntries(laps.map(([lap, { seconds, count }]) => [lap, seconds / count])) }
  );
}
