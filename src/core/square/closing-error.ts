import { fitQuadrilateral } from './fit-quadrilateral.ts';
import { leastPrecisionOf } from './least-precision.ts';
import type { Question } from './measured.ts';
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
 * Computes: by how much the readings contradict each other, and whether their precision explains it: whether some
 * shape fits with no reading further off than the precision.
 * Inputs: question, family and observations in mm; precision, the reading error of one measurement, mm.
 * Result: the residual's length and the least reading error that explains it, mm.
 * Valid: errors small against the piece. On a rectangle the precision explains a closing error of up to
 * (1 + (length + width) / diagonal) times itself.
 * Errors: none.
 * Example: 1800 by 800 with both diagonals 1969.77 closes; with one diagonal 6 longer the residual is 3.
 * Source: plane geometry; least squares.
 */
export function closingError({ family, observations }: Question, precision: number): ClosingError {
  const fit = fitQuadrilateral(family, observations);
  const spare = Math.max(0, observations.length - family.start(1, 1).length);
  const needed = leastPrecisionOf(fit);
  return {
    closing: spare === 0 ? 0 : Math.hypot(...fit.residuals),
    spare,
    needed,
    consistent: explains(usedPrecision(precision), needed),
  };
}
