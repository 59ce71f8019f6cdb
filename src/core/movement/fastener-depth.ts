import { badNumber } from '../answer/bad-number.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';

export interface FastenerDepthInput {
  /** Of the screw under its head, or of the insert, mm. */
  readonly length: number;
  /** Of the part that it ends in, mm. */
  readonly thickness: number;
  /** Of the part that a screw goes through first, mm; none for an insert. */
  readonly through?: number;
  /** Depth of a counterbore in that part, mm. */
  readonly counterbore?: number;
  /** Wood that must remain under the hole, mm; 3 unless told otherwise. */
  readonly remain?: number;
}

export interface FastenerDepth {
  /** How far the fastener reaches into the part it ends in, mm. */
  readonly reach: number;
  /** Depth of the hole there, mm. */
  readonly hole: number;
  /** Wood left under the hole, mm. */
  readonly remaining: number;
  /** What to set the depth stop to from the tip of the bit: through both parts at once where there are two, mm. */
  readonly depthStop: number;
}

/** Drilled deeper than the fastener reaches, mm (common practice). */
const clearance = 1;

/**
 * How deep a screw or insert goes, the wood that remains, and the depth stop. A fastener that would come through is
 * refused.
 *
 * @param input length, thickness, thickness of the part gone through, counterbore, wood that must remain, all mm
 * @returns reach, depth of the hole, wood remaining, setting of the depth stop, all mm
 * @valid holes square to the face; the bit's point is within the hole's depth
 * @errors a `Problem` on `length` when it would come through, leaves too little wood, or doesn't reach the second part;
 *   on any input that is missing or negative
 * @example fastenerDepth({ length: 30, through: 20, counterbore: 8, thickness: 25 }).value
 *   // => { reach: 18, hole: 19, remaining: 6, depthStop: 39 }
 * @source geometry; clearance and remaining wood are common practice
 */
export function fastenerDepth(input: FastenerDepthInput): Outcome<Worked<FastenerDepth>> {
  const { length, thickness, through = 0, counterbore = 0, remain = 3 } = input;
  const wrong =
    badNumber('length', 'The length', length, 'mm', { above: 0, most: 1000 }) ??
    badNumber('thickness', 'The thickness', thickness, 'mm', { above: 0, most: 1000 }) ??
    badNumber('through', 'The first part', through, 'mm', { least: 0, most: 1000 }) ??
    badNumber('counterbore', 'The counterbore', counterbore, 'mm', { least: 0 }) ??
    (counterbore > 0 && counterbore >= through
      ? problem('counterbore', 'It goes through the part. Make it shallower.')
      : undefined) ??
    badNumber('remain', 'The wood to leave', remain, 'mm', { least: 0, most: 100 });
  if (wrong) return wrong;
  const gripped = through - counterbore;
  const reach = length - gripped;
  const hole = reach + clearance;
  const remaining = thickness - hole;
  const depthStop = through + hole;
  if (reach <= 0) return problem('length', phrase`It doesn’t reach past ${mm(gripped)}. Take a longer one.`);
  if (remaining <= 0)
    return problem(
      'length',
      phrase`It would come through: it needs ${mm(hole)} of ${mm(thickness)}. Take a shorter one.`,
    );
  if (remaining < remain)
    return problem('length', phrase`Only ${mm(remaining)} would remain, less than ${mm(remain)}. Take a shorter one.`);
  const step = (finds: string, by: Phrase, gives: number) => workingStep(finds, by, mm(gives));
  return {
    value: { reach, hole, remaining, depthStop },
    working: {
      steps: [
        step('reach', phrase`length ${mm(length)} − wood under the head ${mm(gripped)}`, reach),
        step('hole', phrase`reach ${mm(reach)} + clearance ${mm(clearance)}`, hole),
        step('wood remaining', phrase`thickness ${mm(thickness)} − hole ${mm(hole)}`, remaining),
        step('depth stop', phrase`first part ${mm(through)} + hole ${mm(hole)}`, depthStop),
      ],
      holds: phrase`Holes square to the face.`,
      sources: ['geometry', 'common-practice'],
    },
  };
}
