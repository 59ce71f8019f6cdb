import { badNumber } from '../../core/answer/bad-number.ts';
import type { Outcome } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { elongatedSlots, type Slot } from '../../core/movement/elongated-slots.ts';
import type { Fixing, Part } from '../../store/records/piece.ts';
import type { Judged } from './read-joint.ts';

/** Three screws, 5 mm, the middle one fixed; a start that the maker changes to suit. */
export function usualFixing(length: number): Fixing {
  return { count: 3, inset: Math.min(50, length / 8), shank: 5, fixed: 1, margin: 1 };
}

export const fixingOf = ({ joint, contact }: Pick<Judged, 'joint' | 'contact'>): Fixing =>
  joint.fixing ?? usualFixing(contact.length);

/** Whether the slots are in the panel that moves: in its tenons, under a breadboard end, with pegs for screws. */
export const inPanel = ({ joint }: Pick<Judged, 'joint'>): boolean => joint.kind === 'breadboard';

/** The part that gets the slots: the one that keeps still, or the panel whose tenons sit in a breadboard end. */
export function slottedPart(joint: Pick<Judged, 'joint' | 'meets' | 'parts'>): Part {
  return joint.parts[(joint.meets[0].grain === 'across') === inPanel(joint) ? 0 : 1];
}

/** Whether a joint is to float on screws or pegs in slots, or on what does their work; a panel floats in its grooves. */
export const needsSlots = ({ joint, meets: [first, second], verdict }: Judged): boolean =>
  joint.kind !== 'groove' && verdict.value.moves && first.grain !== second.grain && first.surface !== 'mitre';

/** Where the screws sit, from the end of the seam: evenly between the two insets. */
export function screwPositions({ count, inset }: Fixing, length: number): number[] {
  if (count === 1) return [length / 2];
  return Array.from({ length: count }, (_, at) => inset + ((length - 2 * inset) * at) / (count - 1));
}

/** The slots of a joint whose parts cross: in the part that keeps still, or in the tenons under a breadboard end. */
export function jointSlots(joint: Judged, fixing: Fixing): Outcome<Worked<readonly Slot[]>> {
  const { length } = joint.contact;
  const wrong = badNumber('count', 'It', fixing.count, 'count', { least: 1, most: 40, whole: true });
  if (wrong) return wrong;
  // Movement goes with the distance from the fixed screw, so that the seam alone counts, wherever it lies on the part.
  const positions = screwPositions(fixing, length);
  return elongatedSlots({ ...fixing, moves: joint.verdict, length, positions, inMoving: inPanel(joint) });
}
