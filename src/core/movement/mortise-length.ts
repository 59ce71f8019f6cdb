import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';

export interface MortiseInput {
  /** Of the tenon along the seam, mm. */
  readonly width: number;
  /** How far the part shrinks and swells there, mm, where the joint floats; left out where it is glued. */
  readonly floats?: { readonly shrink: number; readonly swell: number };
  /** Beyond the movement at each end, mm; 1 unless told otherwise. */
  readonly margin?: number;
}

/**
 * How long a mortise must be along the seam: snug where it is glued, wide where it floats.
 *
 * @param input width of the tenon, shrinking and swelling where it floats, margin, all mm
 * @returns length of the mortise, mm
 * @valid tenons in one row along the seam; floating ones get no glue
 * @errors a `Problem` on the input that is missing or negative
 * @example mortiseLength({ width: 40, floats: { shrink: 1, swell: 1.5 } }) // => { value: 44.5 }
 * @source geometry; the margin is common practice
 */
export function mortiseLength({ width, floats, margin = 1 }: MortiseInput): Outcome<Worked> {
  const wrong =
    badNumber('width', 'The width', width, 'mm', { above: 0 }) ??
    badNumber('margin', 'The room', margin, 'mm', { least: 0, most: 20 }) ??
    (floats &&
      (badNumber('floats.shrink', 'The shrinking', floats.shrink, 'mm', { least: 0 }) ??
        badNumber('floats.swell', 'The swelling', floats.swell, 'mm', { least: 0 })));
  if (wrong) return wrong;
  const value = floats ? width + floats.shrink + floats.swell + 2 * margin : width;
  return {
    value,
    working: {
      steps: [
        {
          finds: 'length of the mortise',
          by: floats
            ? phrase('width {width} + shrinking {shrink} + swelling {swell} + 2 × room {margin}', {
                width: mm(width),
                shrink: mm(floats.shrink),
                swell: mm(floats.swell),
                margin: mm(margin),
              })
            : phrase('snug: the width {width}', { width: mm(width) }),
          gives: mm(value),
        },
      ],
      sources: ['geometry', 'common-practice'],
    },
  };
}
