import { firstBad } from '../answer/bad-number.ts';
import type { Outcome } from '../answer/problem.ts';

/** How fast one maker works. */
export interface Pace {
  readonly secondsPerM2: number;
  /** To bring one seam together. */
  readonly secondsPerSeam: number;
  /** To set and tighten one clamp. */
  readonly secondsPerClamp: number;
}

/** Unhurried work by one person with a brush, until a dry run says better: an assumption. */
export const usualPace: Pace = { secondsPerM2: 1800, secondsPerSeam: 20, secondsPerClamp: 15 };

/** The parts of the work that are timed apart: m2 spread, seams closed, clamps set. */
export type Lap = 'spread' | 'close' | 'clamp';

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
 * @example learnPace({ spread: { seconds: 600, count: 0.4 } }) // => { secondsPerM2: 1500.0, secondsPerSeam: 20 }
 * @source ratio estimate; an assumption of this app
 */
export function learnPace(timed: Readonly<Partial<Record<Lap, Timed>>>): Outcome<Pace> {
  const bad = firstBad(
    Object.entries(timed).flatMap(([lap, { seconds, count }]) => [
      [`${lap}.seconds`, 'The lap', seconds, 'seconds', { above: 0 }],
      [`${lap}.count`, 'What was done in it', count, 'count', { above: 0 }],
    ]),
  );
  if (bad) return bad;
  const each = (lap: Timed | undefined, usual: number) => (lap ? lap.seconds / lap.count : usual);
  return {
    secondsPerM2: each(timed.spread, usualPace.secondsPerM2),
    secondsPerSeam: each(timed.close, usualPace.secondsPerSeam),
    secondsPerClamp: each(timed.clamp, usualPace.secondsPerClamp),
  };
}
