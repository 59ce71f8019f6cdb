import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { type Attachment, attachment } from '../../core/movement/attachment.ts';
import { movesOver } from '../../core/movement/moves.ts';
import type { Attached } from '../../store/records/piece.ts';
import type { Judged } from './read-joint.ts';

export type AttachedBy = Attached['kind'];

export const attachments: Readonly<Record<AttachedBy, string>> = {
  button: 'Buttons in a groove',
  'slotted-bracket': 'Slotted brackets',
  'swivel-bracket': 'Swivel brackets',
};

export const attachmentSizes = {
  grooveDepth: 'Depth of a groove',
  slot: 'Slot length',
  shank: 'Shank diameter',
  swing: 'Whole swing across the grain',
  distance: 'From where the top is fixed',
  margin: 'Room to spare',
  hold: 'Must stay in the groove',
};

/** Each kind as it usually is, at the edge of a top that is fixed along its middle. */
export function usualAttached(kind: AttachedBy, length: number): Attached {
  const usual = {
    button: { kind: 'button', grooveDepth: 10, hold: 4 },
    'slotted-bracket': { kind: 'slotted-bracket', slot: 16, shank: 4 },
    'swivel-bracket': { kind: 'swivel-bracket', swing: 12 },
  } as const;
  return { ...usual[kind], distance: length / 2, margin: 1 };
}

/** How to set a button or bracket so that the top can move where it sits. */
export function attachTop(
  { verdict, contact }: Pick<Judged, 'verdict' | 'contact'>,
  attached: Attached,
): Outcome<Worked<Attachment>> {
  const there = movesOver(verdict, contact.length, attached.distance);
  return isProblem(there) ? there : attachment(there, attached);
}
