import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';

export interface FastenerDepthInput {
  /** Of the screw under its head, or of the insert, mm. */
  readonly length: number;
  /** Of the part that it ends in, mm. */
  readonly thickness: number;
  /** Of the part that a screw goes through first, mm; none for an insert. */
  readonly through?: number;
  /** Depth of a counterbore in that part, mm. */
  readonly counterbore?: number;
  /** Drilled deeper than the fastener reaches, mm; 1 unless told otherwise. */
  readonly clearance?: number;
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

/**
 * How deep a screw or insert goes, the wood that remains, and the depth stop. A fastener that would come through is
 * refused.
 *
 * @param input length, thickness, thickness of the part gone through, counterbore, clearance, wood that must remain,
 *   all mm
 * @returns reach, depth of the hole, wood remaining, setting of the depth stop, all mm
 * @valid holes square to the face; the bit's point is within the hole's depth
 * @errors a `Problem` on `length` when it would come through, leaves too little wood, or doesn't reach the second part;
 *   on any input that is missing or negative
 * @example fastenerDepth({ length: 30, through: 20, counterbore: 8, thickness: 25 }).value
 *   // => { reach: 18, hole: 19, remaining: 6, depthStop: 39 }
 * @source geometry; clearance and remaining wood are common practice
 */
export function fastenerDepth(input: FastenerDepthInput): Outcome<Worked<FastenerDepth>> {
  const { length, thickness, through = 0, counterbore = 0, clearance = 1, remain = 3 } = input;
  const wrong =
    badNumber('length', 'The length', length, 'mm', { above: 0, most: 1000 }) ??
    badNumber('thickness', 'The thickness', thickness, 'mm', { above: 0, most: 1000 }) ??
    badNumber('through', 'The first part', through, 'mm', { least: 0, most: 1000 }) ??
    badNumber('counterbore', 'The counterbore', counterbore, 'mm', { least: 0 }) ??
    (counterbore > 0 && counterbore >= through
      ? problem('counterbore', 'It goes through the part. Make it shallower.')
      : undefined) ??
    badNumber('clearance', 'The clearance', clearance, 'mm', { least: 0, most: 50 }) ??
    badNumber('remain', 'The wood to leave', remain, 'mm', { least: 0, most: 100 });
  if (wrong) return wrong;
  const gripped = through - counterbore;
  const reach = length - gripped;
  const hole = reach + clearance;
  const remaining = thickness - hole;
  if (reach <= 0) {
    return problem('length', "It doesn't reach past {gripped}. Take a longer one.", {
      gripped: mm(gripped),
    });
  }
  if (reach >= thickness || remaining <= 0) {
    return problem('length', 'It would come through: it needs {hole} of {thickness}. Take a shorter one.', {
      hole: mm(hole),
      thickness: mm(thickness),
    });
  }
  if (remaining < remain) {
    return problem('length', 'Only {remaining} would remain, less than {remain}. Take a shorter one.', {
      remaining: mm(remaining),
      remain: mm(remain),
    });
  }
  return {
    value: { reach, hole, remaining, depthStop: through + hole },
    working: {
      steps: [
        {
          finds: 'reach',
          by: phrase('length {length} − wood under the head {gripped}', { length: mm(length), gripped: mm(gripped) }),
          gives: mm(reach),
        },
        {
          finds: 'hole',
          by: phrase('reach {reach} + clearance {clearance}', { reach: mm(reach), clearance: mm(clearance) }),
          gives: mm(hole),
        },
        {
          finds: 'wood remaining',
          by: phrase('thickness {thickness} − hole {hole}', { thickness: mm(thickness), hole: mm(hole) }),
          gives: mm(remaining),
        },
        {
          finds: 'depth stop',
          by: phrase('first part {through} + hole {hole}', {
            through: mm(through),
            hole: mm(hole),
          }),
          gives: mm(through + hole),
        },
      ],
      holds: phrase('Holes square to the face.'),
      sources: ['geometry', 'common-practice'],
    },
  };
}
