import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { badLength } from './check-readings.ts';

/**
 * The diagonal to aim for when laying out a rectangle.
 *
 * @param length mm
 * @param width mm
 * @returns mm
 * @valid any size up to 30 m
 * @errors `length` or `width` when it is no length
 * @example layoutDiagonal(1200, 500) // => { value: 1300 }
 * @source Euclid I.47
 */
export function layoutDiagonal(length: number, width: number): Outcome<Worked> {
  const bad = badLength('length', 'The length', length) ?? badLength('width', 'The width', width);
  if (bad) return bad;
  return oneStep(
    'diagonal',
    phrase`square root of ${mm(length)} squared plus ${mm(width)} squared`,
    mm(Math.hypot(length, width)),
    ['geometry'],
  );
}
