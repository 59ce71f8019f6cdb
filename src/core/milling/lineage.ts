import type { MillingStep } from './milling-step.ts';

/**
 * What every piece of a run was before: a panel its strips, a strip the blank that it was ripped from.
 *
 * - `steps`: of one run, in order
 *
 * Result: by id of a piece, the ids that it had, its own included. Valid for steps of one sequence. Errors: none.
 *
 * Example: a panel glued from strips 1 and 2 of a blank B: itself, 1, 2 and B.
 *
 * Source: the steps themselves.
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
