import { fitQuadrilateral } from './fit-quadrilateral.ts';
import { type Matrix, minors, rowsIn } from './linear.ts';
import type { Readings } from './readings.ts';
import type { ShapeFamily } from './shape-family.ts';

/**
 * The least possible largest entry of `target` less any combination of the columns of `sensitivity`
 * (Chebyshev's distance to their span).
 *
 * @param sensitivity one row for each entry of target, more rows than columns for a distance above 0
 * @param target mm
 * @returns mm
 * @valid columns independent
 * @example leastLargest([[1], [1]], [0, 1]) // => 0.5
 * @source de la Vallée Poussin's theorem: the best worst case is set by one more row than there are columns, so each
 *   choice of that many is tried
 */
export function leastLargest(sensitivity: Matrix, target: readonly number[]): number {
  const columns = sensitivity[0]?.length ?? 0;
  const found = minors(sensitivity.map((row, i) => [...row, target[i] ?? 0]));
  let least = 0;
  found.forEach((needed, set) => {
    if (rowsIn(set) !== columns + 1) return;
    const total = sensitivity.reduce(
      (sum, _, row) => sum + (set & (1 << row) ? Math.abs(found[set ^ (1 << row)] ?? 0) : 0),
      0,
    );
    if (total >= 1e-9) least = Math.max(least, Math.abs(needed) / total);
  });
  return least;
}

/**
 * The least reading error with which a shape of the family explains every reading. A rectangle
 * explains the readings when no reading has to be further off than this.
 *
 * @param family a shape family
 * @param readings mm
 * @returns mm; 0 when a shape of the family fits exactly
 * @valid errors small against the piece (the lengths are taken as linear around the least-squares fit)
 * @example leastPrecision(rectangle, { front: 1800, right: 800, back: 1800, left: 800, diagonalAC: 1970.3, diagonalBD: 1969.3 })
 *   // => 0.5
 * @source plane geometry
 */
export function leastPrecision(family: ShapeFamily, readings: Readings): number {
  const { sensitivity, residuals } = fitQuadrilateral(family, readings);
  return leastLargest(sensitivity, residuals);
}
