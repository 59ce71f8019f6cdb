import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { degrees, mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';

export interface BevelWidth {
  /** From the long point to the line of the short point, square across the face, mm. */
  readonly onFace: number;
  /** Across the sawn bevel itself, mm: what the glue gets. */
  readonly bevel: number;
}

/**
 * How wide a bevel comes out for a thickness.
 *
 * @param thickness mm
 * @param angle degrees that the blade is tilted from square, 45 for a box of four sides
 * @returns mm on the face (thickness x tan) and across the bevel (thickness / cos)
 * @valid tilts of more than 0 and up to 60 degrees
 * @errors `thickness` or `angle` out of range
 * @example bevelWidth(20, 45).value // => { onFace: 20.0, bevel: 28.3 }
 * @source plane geometry
 */
export function bevelWidth(thickness: number, angle = 45): Outcome<Worked<BevelWidth>> {
  const bad =
    badNumber('thickness', 'The thickness', thickness, 'mm', { above: 0, most: 300 }) ??
    badNumber('angle', 'The tilt', angle, 'degrees', { above: 0, most: 60 });
  if (bad) return bad;
  const tilt = (angle * Math.PI) / 180;
  const onFace = thickness * Math.tan(tilt);
  const bevel = thickness / Math.cos(tilt);
  return {
    value: { onFace, bevel },
    working: {
      steps: [
        workingStep('bevel on the face', phrase`${mm(thickness)} x tangent of ${degrees(angle)}`, mm(onFace)),
        workingStep('across the bevel', phrase`${mm(thickness)} / cosine of ${degrees(angle)}`, mm(bevel)),
      ],
      sources: ['geometry'],
    },
  };
}
