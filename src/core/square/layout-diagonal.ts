import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { badLength } from './check-readings.ts';

/**
 * Computes: the diagonal to aim for when laying out a rectangle.
 * Inputs: length, width, mm.
 * Result: mm.
 * Valid: any size up to 30 m.
 * Errors: `length` or `width` when it is no length.
 * Example: 1200 by 500: 1300.
 * Source: Euclid I.47.
 */
export function layoutDiagonal(length: number, width: number): Outcome<Worked> {
  const bad = badLength('length', 'The length', length) ?? badLength('width', 'The width', width);
  if (bad) return bad;
  const diagonal = Math.hypot(length, width);
  return {
    value: diagonal,
    working: {
      steps: [
        {
          finds: 'diagonal',
          by: phrase('square root of {length} squared plus {width} squared', { length: mm(length), width: mm(width) }),
          gives: mm(diagonal),
        },
      ],
      sources: ['geometry'],
    },
  };
}
