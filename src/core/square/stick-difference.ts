import { phrase } from '../answer/phrase.ts';
import { factor, mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import type { FarEnd } from './measured.ts';

/**
 * How far the back end of the right-hand cut stands off square, from the difference of the diagonals.
 *
 * @param length mm
 * @param width mm
 * @param difference AC longer than BD, mm
 * @param farEnd `parallel` when both ends lean alike, `square` when the left end is square already
 * @returns mm, positive when C is too far from D: half the difference x diagonal / length when both ends lean alike;
 *   twice that when one of them is square and the other has the whole error
 * @valid to the first order, for a difference under a hundredth of the piece; the shape itself is fitted exactly
 * @example ['parallel', 'square'].map((farEnd) => stickDifference(1800, 800, 2, farEnd).value) // => [1.09, 2.19]
 * @source plane geometry: AC² - BD² = 4 x length x lean when both ends lean alike, 2 x length x lean when one does
 */
export function stickDifference(length: number, width: number, difference: number, farEnd: FarEnd): Worked {
  const diagonal = Math.hypot(length, width);
  const half = difference / 2;
  const alike = (half * diagonal) / length;
  const lean = farEnd === 'square' ? 2 * alike : alike;
  const steps = [
    workingStep('diagonal', phrase`corner to corner of ${mm(length)} by ${mm(width)}`, mm(diagonal)),
    workingStep('half the difference', phrase`${mm(difference)} / 2`, mm(half)),
    workingStep('lean, both ends alike', phrase`${mm(half)} x ${mm(diagonal)} / ${mm(length)}`, mm(alike)),
    ...(farEnd === 'square'
      ? [
          workingStep(
            'lean, left end square',
            phrase`${factor(2)} x ${mm(alike)}: the right end has the whole error`,
            mm(lean),
          ),
        ]
      : []),
  ];
  return {
    value: lean,
    working: {
      steps,
      holds: phrase`The diagonals alone can’t tell which end leans: it is taken as you said.`,
      sources: ['geometry'],
    },
  };
}
