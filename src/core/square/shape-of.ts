import type { ClosingError } from './closing-error.ts';
import { leastPrecision } from './least-precision.ts';
import type { Measured } from './measured.ts';
import { explains, usedPrecision } from './precision.ts';
import { measuredNames, type Readings, withoutReading } from './readings.ts';
import { parallelEdges, parallelEnds, parallelogram, rectangle, type ShapeFamily } from './shape-family.ts';

/**
 * - `square`: within what the precision can show
 * - `racked`: opposite sides equal, corners off
 * - `tapered`: one pair of opposite sides parallel, the other not, so that equal diagonals prove nothing
 * - `irregular`: none of these
 * - `undetermined`: what was measured can't tell
 */
export type Shape = 'square' | 'racked' | 'tapered' | 'irregular' | 'undetermined';

function simplestShape(readings: Readings, precision: number): Shape {
  const could = (...families: ShapeFamily[]) =>
    families.some((family) => explains(precision, leastPrecision(family, readings)));
  if (could(rectangle)) return 'square';
  if (could(parallelogram)) return 'racked';
  return could(parallelEdges, parallelEnds) ? 'tapered' : 'irregular';
}

/**
 * The simplest kind of shape that explains everything measured with no reading further off than the precision.
 *
 * @param measured mm
 * @param precision the reading error of one measurement, mm (below 0.01 taken as 0.01)
 * @param closing the closing error of what was measured
 * @returns the shape. Fewer than five lengths leave a corner free, so they can't tell, unless it is known how the ends
 *   stand. When six readings contradict each other by more than the precision, one of them is wrong: then only a shape
 *   that holds whichever is left out
 * @valid errors small against the piece
 * @example shapeOf(
 *   { readings: { front: 1800, right: 800, back: 1790, left: 800, diagonalAC: 1965.2, diagonalBD: 1965.2 } },
 *   0.5,
 *   { consistent: true, needed: 0 },
 * ) // => 'tapered'
 * @source plane geometry
 */
export function shapeOf(
  { readings, farEnd }: Measured,
  precision: number,
  { needed, consistent }: Pick<ClosingError, 'needed' | 'consistent'>,
): Shape {
  const used = usedPrecision(precision);
  const names = measuredNames(readings);
  if (farEnd !== undefined) {
    if (!consistent) return 'undetermined';
    if (explains(used, leastPrecision(rectangle, readings))) return 'square';
    return farEnd === 'square' ? 'tapered' : 'racked';
  }
  if (names.length < 5) return 'undetermined';
  if (consistent) return simplestShape(readings, used);
  // A tenth more than needed: the needs of different families are found around different shapes.
  const enough = needed * 1.1;
  const shape = simplestShape(readings, enough);
  const stands = names.every((name) => simplestShape(withoutReading(readings, name), enough) === shape);
  return stands ? shape : 'undetermined';
}
