import { isThrough, type Ticks } from '../../core/steps/progress.ts';
import type { Finish } from '../../store/records/finish.ts';
import { stepsOf } from './finish-steps.ts';

/** The finish with these ticks: finished once every step is settled, and not after one is taken back. */
export function withTicks(finish: Finish, ticks: Ticks, now: number): Finish {
  const { finishedAt = now, ...open } = finish;
  return isThrough(ticks, stepsOf(finish)) ? { ...open, ticks, finishedAt } : { ...open, ticks };
}
