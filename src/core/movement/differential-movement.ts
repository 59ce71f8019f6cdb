import { joined } from '../answer/joined.ts';
import { isProblem, type Outcome } from '../answer/problem.ts';
import type { Worked, Working } from '../answer/worked.ts';
import type { GrainAtSeam, JointSide } from './joint-side.ts';
import type { Moves } from './moves.ts';
import { partMovement } from './part-movement.ts';
import type { Seasons } from './seasons.ts';

/** How far two parts would move apart over a length, if nothing held them: as the one shrinks or swells beside the other. */
export interface Differential extends Moves {
  readonly estimated: boolean;
}

/**
 * How far two joined parts would move apart along one direction of their joint.
 *
 * @param sides the two parts
 * @param length of contact in that direction, mm; 0 for none
 * @param seasons moisture today and in the seasons, percent
 * @param across which of the parts' grain, named by how it runs at the seam, lies across that direction and so moves
 *   along it: `across` for the direction of the seam, `along` for the breadth of the contact
 * @returns how far the part that moves shrinks and swells beside the other; the first beside the second where both do,
 *   mm
 * @valid as `dimensionalChange`; along the grain wood is taken not to move
 * @errors a `Problem` of the part that can't be worked out
 * @example differentialMovement(
 *   [
 *     { name: 'cleat', surface: 'face', grain: 'along', wood: cherry },
 *     { name: 'lid', surface: 'face', grain: 'across', wood: cherry },
 *   ],
 *   400,
 *   seasons,
 *   'across',
 * ).value // => { shrink: 1.98, swell: 2.98 }
 * @source Wood handbook (FPL-GTR-190), chapter 13
 */
export function differentialMovement(
  sides: readonly JointSide[],
  length: number,
  seasons: Seasons,
  across: GrainAtSeam,
): Outcome<Worked<Differential>> {
  const changes: (readonly [dry: number, wet: number])[] = [];
  let working: Working = { steps: [], sources: [] };
  let estimated = false;
  for (const { name, grain, wood } of sides) {
    if (length === 0 || grain !== across) continue;
    const moved = partMovement(wood, length, seasons);
    if (isProblem(moved)) return moved;
    const steps = moved.working.steps.map((step) => ({ ...step, finds: `${name}: ${step.finds}` }));
    changes.push([moved.value.dryChange, moved.value.wetChange]);
    working = joined(working, { ...moved.working, steps });
    estimated ||= moved.value.estimated;
  }
  const [[dry, wet] = [0, 0], [otherDry, otherWet] = [0, 0]] = changes;
  return {
    value: {
      shrink: Math.max(0, otherDry - dry, otherWet - wet),
      swell: Math.max(0, dry - otherDry, wet - otherWet),
      estimated,
    },
    working,
  };
}
