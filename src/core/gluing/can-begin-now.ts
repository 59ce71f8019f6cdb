import type { Needing } from './stage-order.ts';

/** The stages that can be begun now: not begun yet, and all they need is ready. Both sets hold ids. */
export function canBeginNow<T extends Needing>(
  stages: readonly T[],
  begun: ReadonlySet<string>,
  ready: ReadonlySet<string>,
): T[] {
  return stages.filter(({ id, needs }) => !begun.has(id) && needs.every((needed) => ready.has(needed)));
}
