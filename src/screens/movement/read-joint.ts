import { isProblem, type Outcome, problem } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { type JointVerdict, jointVerdict } from '../../core/movement/joint-verdict.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Joint, Meeting, Part } from '../../store/records/piece.ts';
import { type Contact, jointContact } from './joint-contact.ts';
import { jointKind } from './joint-kinds.ts';
import { woodOfPart } from './wood-of-part.ts';

/** A joint with its parts, and whatever the record leaves out filled in from its kind and the parts' sizes. */
export interface ReadJoint {
  readonly joint: Joint;
  readonly parts: readonly [Part, Part];
  readonly meets: readonly [Meeting, Meeting];
  readonly contact: Contact;
}

export function readJoint(joint: Joint, parts: readonly Part[]): Outcome<ReadJoint> {
  const [first, second] = joint.parts.map((wanted) => parts.find(({ id }) => id === wanted));
  if (!first || !second) return problem('parts', 'One of its parts is deleted. Delete the joint too.');
  const meets = joint.meets ?? jointKind(joint.kind)?.meets;
  if (!meets) return problem('kind', 'This version doesn’t know this kind of joint.');
  const usual = jointContact([first, second], meets);
  const breadth = usual.breadth === undefined ? undefined : (joint.breadth ?? usual.breadth);
  const contact = { length: joint.length ?? usual.length, ...(breadth !== undefined && { breadth }) };
  return { joint, parts: [first, second], meets, contact };
}

/** What the core says of a joint. */
export function verdictOf({ parts, meets, contact }: ReadJoint, seasons: Seasons): Outcome<Worked<JointVerdict>> {
  const side = (at: 0 | 1) => ({
    ...meets[at],
    name: parts[at].name,
    wood: woodOfPart(parts[at]),
    today: seasons.today,
  });
  return jointVerdict({ first: side(0), second: side(1), ...contact, seasons });
}

export type Judged = ReadJoint & { readonly verdict: Worked<JointVerdict> };

export function judge(joint: Joint, parts: readonly Part[], seasons: Seasons): Outcome<Judged> {
  const read = readJoint(joint, parts);
  if (isProblem(read)) return read;
  const verdict = verdictOf(read, seasons);
  return isProblem(verdict) ? verdict : { ...read, verdict };
}
