import type { MillingStep } from './milling-step.ts';

/**
 * What every piece of a run was before: a panel its strips, a strip the blank that it was ripped from.
 *
 * @param steps of one run, in order
 * @returns by id of a piece, the ids that it had, its own included
 * @valid steps of one sequence
 * @example [...lineage([{ pieces: [{ id: 'B' }] }, { pieces: [{ id: 'B/1', from: ['B'] }] }]).get('B/1')]
 *   // => ['B/1', 'B']
 * @source the steps themselves
 */
export function lineage(steps: readonly MillingStep[]): ReadonlyMap<string, ReadonlySet<string>> {
  const was = new Map<string, Set<string>>();
  for (const { pieces } of steps) {
    for (const { id, from = [] } of pieces) {
      const known = was.get(id) ?? new Set([id]);
      for (const earlier of from) for (const before of was.get(earlier) ?? [earlier]) known.add(before);
      was.set(id, known);
    }
  }
  return was;
}
