import { isProblem, type Outcome, problem } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { type JointVerdict, jointVerdict } from '../../core/movement/joint-verdict.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Joint, Meeting, Part } from '../../store/records/piece.ts';
import { type Contact, jointContact } from './joint-contact.ts';
import { jointKind } from './joint-kinds.ts';
import { woodOfPart } from './wood-of-part.ts';

/**
 * A joint with its parts, whatever the record leaves out filled in from its kind and the parts' sizes, and what the core says
 * of it.
 */
export interface Judged {
  readonly joint: Joint;
  readonly parts: readonly [Part, Part];
  readonly meets: readonly [Meeting, Meeting];
  readonly contact: Contact;
  readonly seasons: Seasons;
  readonly verdict: Worked<JointVerdict>;
}

export function judge(joint: Joint, among: readonly Part[], seasons: Seasons): Outcome<Judged> {
  const [first, second] = joint.parts.map((wanted) => among.find(({ id }) => id === wanted));
  if (!first || !second) return problem('parts', 'One of its parts is deleted. Delete the joint too.');
  const parts = [first, second] as const;
  const meets = joint.meets ?? jointKind(joint.kind)?.meets;
  if (!meets) return problem('kind', 'This version doesn’t know this kind of joint.');
  const contact = jointContact(joint, parts, meets);
  const side = (at: 0 | 1) => ({ ...meets[at], name: parts[at].name, wood: woodOfPart(parts[at]) });
  const verdict = jointVerdict({ sides: [side(0), side(1)], ...contact, seasons });
  return isProblem(verdict) ? verdict : { joint, parts, meets, contact, seasons, verdict };
}
