import { isSettled, type Ticks, throughOf } from '../steps/progress.ts';
import { lineage } from './lineage.ts';
import type { MillingStep } from './milling-step.ts';

/**
 * Which pieces wait at which step: those not through there, with everything before it done. Several steps have some at
 * once, since a batch needn't move as one.
 *
 * @param steps of one run, in order
 * @param ticks how far it is
 * @returns by id of a step, the ids of its pieces that can be done now; steps without any are absent
 * @valid steps of one sequence; a skipped step holds nothing back
 * @example [...readyPieces(millingSequence(oneShelf), {}).values()] // => [['B1@0']]
 * @source the order of work of the sequence
 */
export function readyPieces(steps: readonly MillingStep[], ticks: Ticks): ReadonlyMap<string, readonly string[]> {
  const was = lineage(steps);
  const held = new Set<string>();
  const ready = new Map<string, readonly string[]>();
  for (const step of steps) {
    if (isSettled(ticks, step)) continue;
    const through = throughOf(ticks, step);
    const open = step.pieces.map(({ id }) => id).filter((id) => !through.has(id));
    const free = open.filter((id) => [...(was.get(id) ?? [])].every((before) => !held.has(before)));
    if (free.length > 0) ready.set(step.id, free);
    for (const id of open) held.add(id);
  }
  return ready;
}
