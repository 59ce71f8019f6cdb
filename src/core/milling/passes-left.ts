import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { count, mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import type { MachineLimit } from './machine-limits.ts';

export interface Passes {
  readonly passes: number;
  /** What each of them takes when they are made equal, in mm. */
  readonly each: number;
}

/**
 * How many passes bring a piece to its target.
 *
 * @param thickness what it is and what it becomes, mm
 * @param target what it is and what it becomes, mm
 * @param depth what one pass is to take, mm
 * @param limit the machine's limit for one pass
 * @returns number of passes, and the mm that each takes when all are equal
 * @valid one face, or both in turn; a wide or hard board wants shallower passes
 * @errors a figure that isn't above zero, a pass deeper than the machine's limit, a target already passed
 * @example passesLeft(23.4, 20, 0.8, machineLimits.planer).value // => { passes: 5, each: 0.68 }
 * @source arithmetic; the deepest pass as the limit says
 */
export function passesLeft(
  thickness: number,
  target: number,
  depth: number,
  limit: MachineLimit,
): Outcome<Worked<Passes>> {
  const off = thickness - target;
  const wrong =
    badNumber('thickness', 'The thickness', thickness, 'mm', { above: 0, most: 500 }) ??
    badNumber('target', 'The target', target, 'mm', { above: 0 }) ??
    badNumber('depth', 'One pass', depth, 'mm', { least: 0.05, most: limit.depthPerPass.mm }) ??
    (off < -0.005 ? problem('thickness', phrase`Already ${mm(-off)} under the target.`) : undefined);
  if (wrong) return wrong;
  // A hair over a whole number of passes is a whole number that was not quite exact in binary.
  const passes = Math.max(0, Math.ceil(off / depth - 1e-6));
  const each = passes === 0 ? 0 : off / passes;
  return {
    value: { passes, each },
    working: {
      steps: [
        workingStep('still to come off', phrase`${mm(thickness)} - ${mm(target)}`, mm(off)),
        workingStep('passes', phrase`${mm(off)} / ${mm(depth)}, rounded up`, count(passes)),
        ...(passes === 0 ? [] : [workingStep('each pass', phrase`${mm(off)} / ${count(passes)}`, mm(each))]),
      ],
      holds: phrase`Up to ${mm(limit.depthPerPass.mm)} in one pass on this machine.`,
      sources: [limit.depthPerPass.source],
    },
  };
}
