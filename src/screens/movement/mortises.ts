import type { Outcome } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { elongatedSlots, type Slot } from '../../core/movement/elongated-slots.ts';
import type { Judged } from './read-joint.ts';

/** A joint that is glued keeps still. */
const still: Worked<{ shrink: number; swell: number }> = {
  value: { shrink: 0, swell: 0 },
  working: { steps: [], sources: [] },
};

/**
 * The mortises along a seam or mitre: all snug where the joint is glued; where it floats, the one nearest the middle is snug and
 * the others grow with their distance from it.
 */
export function mortises(
  { contact: { length }, verdict }: Judged,
  positions: readonly number[],
  width: number,
): Outcome<Worked<readonly Slot[]>> {
  const fromMiddle = positions.map((at) => Math.abs(at - length / 2));
  const fixed = fromMiddle.indexOf(Math.min(...fromMiddle));
  const floats = verdict.value.advice !== 'glue';
  return elongatedSlots({
    moves: floats ? verdict : still,
    length,
    positions,
    fixed,
    shank: width,
    margin: floats ? 1 : 0,
  });
}
