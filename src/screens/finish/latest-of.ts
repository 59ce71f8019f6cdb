import type { Timer } from '../../store/records/timer.ts';
import type { KeptStep } from './finish-steps.ts';

/** When a wait is late: the can's longest time before the next coat, or until it must be wiped off. */
export function latestOf({ phase, startedAt }: Pick<Timer, 'phase' | 'startedAt'>, steps: readonly KeptStep[]) {
  const most = steps.flatMap(({ waits }) => waits).find(({ name }) => name === phase)?.mostSeconds;
  return most === undefined ? undefined : startedAt + most * 1000;
}
