import { fitQuadrilateral } from './fit-quadrilateral.ts';
import { leastLargest } from './least-precision.ts';
import type { Measured } from './measured.ts';
import { usedPrecision } from './precision.ts';
import { readOff } from './quadrilateral.ts';
import { measuredNames } from './readings.ts';
import { leftEndSquare, parallelogram, rectangle } from './shape-family.ts';

/**
 * The least slide that readings of this precision can show: the lean at which no rectangle explains the
 * readings any more. Both ends lean together, or the right one alone where the left end is known to be square.
 *
 * @param measured mm
 * @param precision the reading error of one measurement, mm
 * @returns mm. With all six lengths read it is precision x diagonal / front; with a stick for the difference of the
 *   diagonals half of that. Infinity when these readings can't show a lean
 * @valid near a rectangle
 * @example detectableSlide({ readings: lengthsOf(rectangle.corners([1800, 800])) }, 0.5)
 *   // => 0.55
 * @source plane geometry
 */
export function detectableSlide({ readings, farEnd }: Measured, precision: number): number {
  const square = fitQuadrilateral(rectangle, readings);
  const { x, y } = square.shape.C;
  const step = 1e-4 * x;
  const leaning = farEnd === 'square' ? leftEndSquare : parallelogram;
  const names = measuredNames(readings);
  const straight = readOff(square.shape, names);
  const leant = readOff(leaning.corners([x, step, y]), names);
  const perMillimetre = leant.map((value, i) => (value - (straight[i] ?? 0)) / step);
  const shown = leastLargest(square.sensitivity, perMillimetre);
  return shown > 1e-3 ? usedPrecision(precision) / shown : Number.POSITIVE_INFINITY;
}
