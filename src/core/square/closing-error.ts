import type { Fit } from './fit-quadrilateral.ts';
import { leastLargest } from './least-precision.ts';
import { explains, usedPrecision } from './precision.ts';

export interface ClosingError {
  /** The length of the residual after the least-squares fit, mm; 0 when nothing is measured twice over. */
  readonly closing: number;
  /** Readings beyond those needed; with none there is nothing to contradict. */
  readonly spare: number;
  /** The least reading error that explains the contradiction, mm. */
  readonly needed: number;
  readonly consistent: boolean;
}

/**
 * By how much the readings contradict each other, and whether their precision explains it: whether some
 * shape fits with no reading further off than the precision.
 *
 * @param fit the nearest shape of the family in which the piece is looked for
 * @param precision the reading error of one measurement, mm
 * @returns the residual's length and the least reading error that explains it, mm
 * @valid errors small against the piece. On a rectangle the precision explains a closing error of up to (1 + (length +
 *   width) / diagonal) times itself
 * @example closingError(
 *   fitQuadrilateral(anyShape, {
 *     ...{ front: 1800, right: 800, back: 1800, left: 800, diagonalAC: 1969.77, diagonalBD: 1975.77 },
 *   }),
 *   0.5,
 * ) // => { closing: 3.0, consistent: false }
 * @source plane geometry; least squares
 */
export function closingError(fit: Fit, precision: number): ClosingError {
  const spare = Math.max(0, fit.residuals.length - (fit.sensitivity[0]?.length ?? 0));
  const needed = leastLargest(fit.sensitivity, fit.residuals);
  return {
    closing: spare === 0 ? 0 : Math.hypot(...fit.residuals),
    spare,
    needed,
    consistent: explains(usedPrecision(precision), needed),
  };
}
