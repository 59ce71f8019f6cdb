import { fitQuadrilateral } from './fit-quadrilateral.ts';
import { leastLargest } from './least-precision.ts';
import type { Measured } from './measured.ts';
import { usedPrecision } from './precision.ts';
import { readOff } from './quadrilateral.ts';
import { measuredNames } from './readings.ts';
import { rectangle } from './shape-family.ts';

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
  const { A, B, C, D } = square.shape;
  const step = 1e-4 * B.x;
  const lean = { x: D.x + (farEnd === 'square' ? 0 : step), y: D.y };
  const names = measuredNames(readings);
  const straight = readOff(square.shape, names);
  const leaning = readOff({ A, B, C: { x: C.x + step, y: C.y }, D: lean }, names);
  const perMillimetre = leaning.map((value, i) => (value - (straight[i] ?? 0)) / step);
  const shown = leastLargest(square.sensitivity, perMillimetre);
  return shown > 1e-3 ? usedPrecision(precision) / shown : Number.POSITIVE_INFINITY;
}
