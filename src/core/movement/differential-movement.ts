import { isProblem, type Outcome } from '../answer/problem.ts';
import type { SourceId } from '../answer/source-id.ts';
import type { WorkingStep } from '../answer/worked.ts';
import type { GrainAtSeam, JointSide } from './joint-side.ts';
import { partMovement } from './part-movement.ts';
import type { SeasonMoisture } from './seasons.ts';

/** How far two parts would move apart over a length, if nothing held them; mm, neither is negative. */
export interface Differential {
  readonly dry: number;
  readonly wet: number;
  readonly estimated: boolean;
  readonly steps: readonly WorkingStep[];
  readonly sources: readonly SourceId[];
}

const still: Differential = { dry: 0, wet: 0, estimated: false, steps: [], sources: [] };

/**
 * How far two joined parts would move apart along one direction of their joint.
 *
 * @param sides the two parts
 * @param length of contact in that direction, mm
 * @param seasons moisture in the seasons, percent
 * @param across which of the parts' grain, named by how it runs at the seam, lies across that direction and so moves
 *   along it: `across` for the direction of the seam, `along` for the breadth of the contact
 * @returns the difference in the dry and in the wet season, mm
 * @valid as `dimensionalChange`; along the grain wood is taken not to move
 * @errors a `Problem` of the part that can't be worked out
 * @example differentialMovement(
 *   [
 *     { name: 'cleat', surface: 'face', grain: 'along', wood: cherry, today: 8 },
 *     { name: 'lid', surface: 'face', grain: 'across', wood: cherry, today: 8 },
 *   ],
 *   400,
 *   seasons,
 *   'across',
 * ) // => { dry: 1.98, wet: 2.98 }
 * @source Wood handbook (FPL-GTR-190), chapter 13
 */
export function differentialMovement(
  sides: readonly [JointSide, JointSide],
  length: number,
  { dry, wet }: SeasonMoisture,
  across: GrainAtSeam,
): Outcome<Differential> {
  const moved = sides.map((side) => {
    if (side.grain !== across) return still;
    const movement = partMovement(side.wood, length, { today: side.today, dry, wet });
    if (isProblem(movement)) return movement;
    const { dryChange, wetChange, estimated } = movement.value;
    const steps = movement.working.steps.map((step) => ({ ...step, finds: `${side.name}: ${step.finds}` }));
    return { dry: dryChange, wet: wetChange, estimated, steps, sources: movement.working.sources };
  });
  const [first = still, second = still] = moved;
  if (isProblem(first)) return first;
  if (isProblem(second)) return second;
  return {
    dry: Math.abs(first.dry - second.dry),
    wet: Math.abs(first.wet - second.wet),
    estimated: first.estimated || second.estimated,
    steps: [...first.steps, ...second.steps],
    sources: [...new Set([...first.sources, ...second.sources])],
  };
}
