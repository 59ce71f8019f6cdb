import { badNumber } from '../../core/answer/bad-number.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { type Attachment, attachment } from '../../core/movement/attachment.ts';
import { partMovement } from '../../core/movement/part-movement.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Attached } from '../../store/records/piece.ts';
import { movingPart } from './joint-slots.ts';
import type { ReadJoint } from './read-joint.ts';
import { woodOfPart } from './wood-of-part.ts';

export type AttachedBy = Attached['kind'];

/** Each kind as it usually is, at the edge of a top that is fixed along its middle. */
export function usualAttached(kind: AttachedBy, length: number): Attached {
  const shared = { distance: length / 2, margin: 1 };
  if (kind === 'button') return { kind, ...shared, grooveDepth: 10, hold: 4 };
  return kind === 'slotted-bracket' ? { kind, ...shared, slot: 16, shank: 4 } : { kind, ...shared, swing: 12 };
}

/** How to set a button or bracket so that the top can move where it sits. */
export function attachTop(joint: ReadJoint, seasons: Seasons, attached: Attached): Outcome<Worked<Attachment>> {
  const { distance } = attached;
  const wood = woodOfPart(joint.parts[movingPart(joint) ?? 0]);
  const wrong = badNumber('distance', 'The distance', distance, 'mm', { above: 0, most: joint.contact.length });
  const moved = wrong ?? partMovement(wood, distance, seasons);
  if (isProblem(moved)) return moved;
  const set = attachment(moved.value, attached);
  if (isProblem(set)) return set;
  const { working } = set;
  return {
    ...set,
    working: {
      ...working,
      steps: [...moved.working.steps, ...working.steps],
      sources: [...new Set([...moved.working.sources, ...working.sources])],
    },
  };
}
