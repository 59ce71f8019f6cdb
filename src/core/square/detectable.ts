import { fitQuadrilateral } from './fit-quadrilateral.ts';
import { leastLargest } from './least-precision.ts';
import type { Question } from './measured.ts';
import { expectedOf } from './observation.ts';
import { usedPrecision } from './precision.ts';
import type { Quadrilateral } from './quadrilateral.ts';
import { leftEndSquare, rectangle } from './shape-family.ts';

/**
 * The least slide that readings of this precision can show: the lean at which no rectangle explains the
 * readings any more. Both ends lean together, or the right one alone where the left end is known to be square.
 *
 * @param question family and observations in mm
 * @param precision the reading error of one measurement, mm
 * @returns mm. With all six lengths read it is precision x diagonal / front; with a stick for the difference of the
 *   diagonals half of that. Infinity when these readings can't show a lean
 * @valid near a rectangle
 * @example detectableSlide(questionOf({ way: 'readings', readings: lengthsOf(rectangle.corners([1800, 800])) }), 0.5)
 *   // => 0.55
 * @source plane geometry
 */
export function detectableSlide({ family, observations }: Question, precision: number): number {
  const square = fitQuadrilateral(rectangle, observations);
  const { A, B, C, D } = square.shape;
  const step = 1e-4 * B.x;
  const moved = { x: C.x + step, y: C.y };
  const leaning: Quadrilateral =
    family === leftEndSquare ? { A, B, C: moved, D } : { A, B, C: moved, D: { x: D.x + step, y: D.y } };
  const straight = expectedOf(square.shape, observations);
  const perMillimetre = expectedOf(leaning, observations).map((value, i) => (value - (straight[i] ?? 0)) / step);
  const shown = leastLargest(square.sensitivity, perMillimetre);
  return shown > 1e-3 ? usedPrecision(precision) / shown : Number.POSITIVE_INFINITY;
}
