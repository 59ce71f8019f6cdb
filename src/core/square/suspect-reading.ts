import { fitQuadrilateral } from './fit-quadrilateral.ts';
import { leastPrecision } from './least-precision.ts';
import { observationsOf } from './observation.ts';
import { isConvex, lengthsOf } from './quadrilateral.ts';
import { measuredNames, type ReadingName, type Readings, withoutReading } from './readings.ts';
import { anyShape, rectangle } from './shape-family.ts';

/**
 * Computes: how far the shape that five readings give is from a rectangle.
 * Inputs: readings, mm, five of them.
 * Result: the least error in each of its six lengths that would make a rectangle of it, mm; Infinity when the five
 * make no piece.
 * Valid: as `fitQuadrilateral`.
 * Errors: none.
 * Example: sides 1800 and 800 and one diagonal of 1970.77: about 1, the amount the two diagonals are off.
 * Source: plane geometry.
 */
export function distanceFromRectangle(readings: Readings): number {
  const { shape, residuals } = fitQuadrilateral(anyShape, observationsOf(readings));
  const lengths = lengthsOf(shape);
  const makesPiece = isConvex(shape) && Math.hypot(...residuals) < 1e-6 * lengths.front;
  return makesPiece ? leastPrecision(rectangle, observationsOf(lengths)) : Number.POSITIVE_INFINITY;
}

/**
 * Computes: which of six contradicting readings to take again. Any five readings agree with themselves, so it is the
 * one that, taken out, leaves a shape at most half as far from a rectangle as taking out any other does.
 * Inputs: readings, mm, all six, known to contradict each other.
 * Result: its name, or null when none stands out.
 * Valid: a piece that was meant to be a rectangle.
 * Errors: none; null with other than six readings.
 * Example: 1800 by 800, diagonals 1969.8, right end read as 820: `right`.
 * Source: plane geometry; the half is an assumption of what stands out.
 */
export function suspectReading(readings: Readings): ReadingName | null {
  const names = measuredNames(readings);
  if (names.length < 6) return null;
  const [best, second] = names
    .map((name) => ({ name, distance: distanceFromRectangle(withoutReading(readings, name)) }))
    .sort((one, other) => one.distance - other.distance);
  return best && second && Number.isFinite(best.distance) && best.distance <= second.distance / 2 ? best.name : null;
}
