/** A stage waits for those it needs. */
export interface Needing {
  readonly id: string;
  readonly name: string;
  readonly needs: readonly string[];
}

/**
 * The stages that can be begun now: not begun yet, and all they need is ready.
 *
 * @param stages each with its id and the ids that it needs
 * @param begun ids of stages that are begun
 * @param ready ids of stages that are far enough to be built on
 * @returns the stages, in the order given
 * @valid any number of stages
 * @example canBeginNow([{ id: 'panel', needs: [] }, { id: 'lid', needs: ['panel'] }], new Set(['panel']), new Set())
 *   // => []
 * @source logic alone
 */
export function canBeginNow<T extends Needing>(
  stages: readonly T[],
  begun: ReadonlySet<string>,
  ready: ReadonlySet<string>,
): T[] {
  return stages.filter(({ id, needs }) => !begun.has(id) && needs.every((needed) => ready.has(needed)));
}
