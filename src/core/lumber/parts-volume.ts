import { phrase } from '../answer/phrase.ts';
import { count, m3, mm } from '../answer/quantity.ts';
import { sumOf } from '../answer/sum-of.ts';
import type { Worked, WorkingStep } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import type { PartSizes } from './check-part.ts';
import { asBoardFeet } from './exact-volume.ts';

/**
 * How much wood the finished parts hold, before any kerf, jointing, planing or waste.
 *
 * @param parts finished sizes in mm, and how many of each
 * @returns cubic metres and board feet, each with its working; 0 without parts
 * @valid straight, square-edged parts within `partLimits`
 * @example partsVolume([{ name: 'side', length: 600, width: 300, thickness: 20, quantity: 2 }])
 *   // => { cubicMetres: { value: 0.0072 }, boardFeet: { value: 3.05 } }
 * @source geometry; board foot from NIST SP 811 appendix B
 */
export function partsVolume(parts: readonly PartSizes[]): { readonly cubicMetres: Worked; readonly boardFeet: Worked } {
  const each = parts.map(
    ({ name, length, width, thickness, quantity }): WorkingStep =>
      workingStep(
        name,
        phrase`${count(quantity)} × length ${mm(length)} × width ${mm(width)} × thickness ${mm(thickness)}`,
        m3(quantity * length * width * thickness * 1e-9),
      ),
  );
  const total = sumOf(each, ({ gives }) => gives.value);
  const cubicMetres: Worked = {
    value: total,
    working: {
      steps: [...each, workingStep('volume of the parts', phrase`all of these together`, m3(total))],
      holds: phrase`Finished sizes, without waste.`,
      sources: ['geometry'],
    },
  };
  return { cubicMetres, boardFeet: asBoardFeet(cubicMetres) };
}
