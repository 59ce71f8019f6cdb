import { fitQuadrilateral } from './fit-quadrilateral.ts';
import { leastPrecision } from './least-precision.ts';
import { isConvex, lengthsOf } from './quadrilateral.ts';
import { measuredNames, type ReadingName, type Readings, withoutReading } from './readings.ts';
import { anyShape, rectangle } from './shape-family.ts';

/**
 * How far the shape that five readings give is from a rectangle.
 *
 * @param readings mm, five of them
 * @returns the least error in each of its six lengths that would make a rectangle of it, mm; Infinity when the five
 *   make no piece
 * @valid as `fitQuadrilateral`
 * @example distanceFromRectangle({ front: 1800, right: 800, back: 1800, left: 800, diagonalAC: 1970.77 }) // => 1.0
 * @source plane geometry
 */
export function distanceFromRectangle(readings: Readings): number {
  const { shape, residuals } = fitQuadrilateral(anyShape, readings);
  const lengths = lengthsOf(shape);
  const makesPiece = isConvex(shape) && Math.hypot(...residuals) < 1e-6 * lengths.front;
  return makesPiece ? leastPrecision(rectangle, lengths) : Number.POSITIVE_INFINITY;
}

/**
 * Which of six contradicting readings to take again. Any five readings agree with themselves, so it is the
 * one that, taken out, leaves a shape at most half as far from a rectangle as taking out any other does.
 *
 * @param readings mm, all six, known to contradict each other
 * @returns its name, or null when none stands out or there are not six
 * @valid a piece that was meant to be a rectangle
 * @example suspectReading({ front: 1800, right: 820, back: 1800, left: 800, diagonalAC: 1969.8, diagonalBD: 1969.8 })
 *   // => 'right'
 * @source plane geometry; the half is an assumption of what stands out
 */
export function suspectReading(readings: Readings): ReadingName | null {
  const names = measuredNames(readings);
  if (names.length < 6) return null;
  const [best, second] = names
    .map((name) => ({ name, distance: distanceFromRectangle(withoutReading(readings, name)) }))
    .sort((one, other) => one.distance - other.distance);
  return best && second && Number.isFinite(best.distance) && best.distance <= second.distance / 2 ? best.name : null;
}
