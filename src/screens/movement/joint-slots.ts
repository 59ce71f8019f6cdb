import { type Outcome, problem } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { elongatedSlots, type Slot } from '../../core/movement/elongated-slots.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Fixing, Part } from '../../store/records/piece.ts';
import type { Judged, ReadJoint } from './read-joint.ts';
import { woodOfPart } from './wood-of-part.ts';

/** Three screws, 5 mm, the middle one fixed; a start that the maker changes to suit. */
export function usualFixing(length: number): Fixing {
  return { count: 3, inset: Math.min(50, length / 8), shank: 5, fixed: 1, margin: 1 };
}

/** Which of the two parts moves along the seam, when one alone does. */
export function movingPart({ meets }: Pick<ReadJoint, 'meets'>): 0 | 1 | undefined {
  const across = meets.map(({ grain }) => grain === 'across');
  if (across[0] === across[1]) return undefined;
  return across[0] ? 0 : 1;
}

export const fixingOf = ({ joint, contact }: ReadJoint): Fixing => joint.fixing ?? usualFixing(contact.length);

/** The part that gets the slots: the one that keeps still, or the panel whose tenons sit in a breadboard end. */
export function slottedPart(joint: ReadJoint): Part {
  const moving = movingPart(joint) ?? 0;
  return joint.parts[(joint.joint.kind === 'breadboard') === (moving === 0) ? 0 : 1];
}

/** Whether a joint is to float on screws or pegs in slots, or on what does their work; a panel floats in its grooves. */
export const needsSlots = (joint: Judged): boolean =>
  joint.joint.kind !== 'groove' &&
  joint.verdict.value.moves &&
  movingPart(joint) !== undefined &&
  joint.meets[0].surface !== 'mitre';

/** Where the screws sit, from the end of the seam: evenly between the two insets. */
export function screwPositions({ count, inset }: Fixing, length: number): number[] {
  if (count === 1) return [length / 2];
  return Array.from({ length: count }, (_, at) => inset + ((length - 2 * inset) * at) / (count - 1));
}

/** The slots of a joint whose parts cross: in the part that keeps still, or in the tenons under a breadboard end. */
export function jointSlots(read: ReadJoint, fixing: Fixing, seasons: Seasons): Outcome<Worked<readonly Slot[]>> {
  const moving = movingPart(read);
  if (moving === undefined) return problem('meets', 'Both grains run the same way: nothing to slot.');
  const { length } = read.contact;
  const { shank, head, margin } = fixing;
  return elongatedSlots({
    wood: woodOfPart(read.parts[moving]),
    // Movement goes with the distance from the fixed screw, so that the seam alone counts, wherever it lies on the part.
    width: length,
    seasons,
    positions: screwPositions(fixing, length),
    fixed: fixing.fixed,
    fastener: { shank, ...(head !== undefined && { head }) },
    margin,
    slottedWidth: length,
    slotsIn: read.joint.kind === 'breadboard' ? 'moving' : 'still',
  });
}
