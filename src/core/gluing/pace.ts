import { badNumber } from '../answer/bad-number.ts';
import { type Outcome, problem } from '../answer/problem.ts';

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

/** What the stopwatch showed in one dry run or real glue-up. A lap that was not taken is left out. */
export interface DryRun {
  readonly areaM2: number;
  readonly seams: number;
  readonly clamps: number;
  readonly spreadSeconds?: number;
  readonly closeSeconds?: number;
  readonly clampSeconds?: number;
}

/**
 * The maker's pace from the runs timed so far: for each part of the work all seconds over all that was done in them,
 * so that a large run counts for more than a small one.
 *
 * @param runs areas in m2, counts of seams and clamps, laps in seconds
 * @param before the pace to keep where no lap was taken; the usual pace at first
 * @returns seconds per m2 spread, per seam closed, per clamp set
 *
 * Valid: runs like the work to come; a dry run without glue flatters the spreading.
 * Errors: a negative or absurd lap; a lap for nothing done, at `runs.N...`.
 * Example: 0.1 m2 in 120 s and 0.3 m2 in 480 s: 600 s over 0.4 m2, 1500 s per m2.
 * Source: ratio estimate; an assumption of this app.
 */
export function learnPace(runs: readonly DryRun[], before: Pace = usualPace): Outcome<Pace> {
  const parts = [
    { lap: 'spreadSeconds', done: 'areaM2', unit: 'm2', name: 'The area' },
    { lap: 'closeSeconds', done: 'seams', unit: 'count', name: 'The number of seams' },
    { lap: 'clampSeconds', done: 'clamps', unit: 'count', name: 'The number of clamps' },
  ] as const;
  const learnt: (number | undefined)[] = [];
  for (const { lap, done, unit, name } of parts) {
    let time = 0;
    let amount = 0;
    for (const [index, run] of runs.entries()) {
      const seconds = run[lap];
      if (seconds === undefined) continue;
      const bad =
        badNumber(`runs.${index}.${done}`, name, run[done], unit, { least: 0, most: 1000 }) ??
        badNumber(`runs.${index}.${lap}`, 'The lap', seconds, 'seconds', { above: 0, most: 86400 });
      if (bad) return bad;
      if (run[done] === 0) return problem(`runs.${index}.${done}`, 'A lap was timed, but nothing was done in it.');
      time += seconds;
      amount += run[done];
    }
    learnt.push(amount > 0 ? time / amount : undefined);
  }
  const [perM2, perSeam, perClamp] = learnt;
  return {
    secondsPerM2: perM2 ?? before.secondsPerM2,
    secondsPerSeam: perSeam ?? before.secondsPerSeam,
    secondsPerClamp: perClamp ?? before.secondsPerClamp,
  };
}
