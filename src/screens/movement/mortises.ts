import type { Outcome } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { elongatedSlots, type Slot } from '../../core/movement/elongated-slots.ts';
import type { Judged } from './read-joint.ts';

/**
 * The mortises along a seam or mitre: all snug where the joint is glued; where it floats, the one nearest the middle is snug and
 * the others grow with their distance from it.
 */
export function mortises(
  { contact: { length }, verdict }: Judged,
  positions: readonly number[],
  width: number,
): Outcome<Worked<readonly Pick<Slot, 'position' | 'length'>[]>> {
  if (verdict.value.advice === 'glue')
    return { value: positions.map((position) => ({ position, length: width })), working: { steps: [], sources: [] } };
  const fromMiddle = positions.map((at) => Math.abs(at - length / 2));
  const fixed = fromMiddle.indexOf(Math.min(...fromMiddle));
  return elongatedSlots({ moves: verdict, length, positions, fixed, shank: width });
}
