import { isThrough, type Step, type Ticks } from '../../core/steps/progress.ts';
import type { Json } from './record.ts';

/** What is kept of a list that is ticked step by step. */
interface Ticked {
  readonly steps: readonly Json[];
  readonly ticks: Ticks;
  readonly finishedAt?: number;
}

/** The record with these ticks: finished as soon as every step is through or skipped, and open again when one isn't. */
export function withTicks<R extends Ticked>(record: R, ticks: Ticks, now: number): R {
  const { finishedAt = now, ...open } = record;
  const through = isThrough(ticks, record.steps as unknown as readonly Step[]);
  return { ...open, ticks, ...(through && { finishedAt }) } as R;
}
