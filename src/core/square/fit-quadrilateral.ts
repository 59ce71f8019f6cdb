import { type Matrix, solve } from './linear.ts';
import { expectedOf, nominalSize, type Observation } from './observation.ts';
import type { Quadrilateral } from './quadrilateral.ts';
import type { ShapeFamily } from './shape-family.ts';

/** The shape of a family that comes nearest to what was measured. */
export interface Fit {
  readonly shape: Quadrilateral;
  /** Measured less fitted, mm, one for each observation. */
  readonly residuals: readonly number[];
  /** How each observation answers to each parameter of the family, mm per mm. */
  readonly sensitivity: Matrix;
}

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);

/** How each parameter, a row, moves the observations. By differences: the lengths are smooth, and a step of a ten-millionth of the piece is far above rounding. */
function slopesAt(family: ShapeFamily, at: readonly number[], observations: readonly Observation[]): Matrix {
  const step = 1e-7 * Math.max(...at.map(Math.abs));
  const here = expectedOf(family.corners(at), observations);
  return at.map((value, index) => {
    const moved = expectedOf(family.corners(at.with(index, value + step)), observations);
    return moved.map((length, row) => (length - (here[row] ?? 0)) / step);
  });
}

/**
 * The shape of a family nearest to the observations by least squares (Gauss-Newton, damped after
 * Levenberg and Marquardt). With fewer observations than parameters it stays as near to a rectangle as they let it.
 *
 * @param family a shape family
 * @param observations mm, at least one
 * @returns the corners in mm, A at the origin and B on the x axis; the residuals in mm
 * @valid pieces of 50 mm to 6 m that are near enough to a rectangle to have their corners in order; it ends after 100
 *   steps at the best shape found
 * @example fitQuadrilateral(anyShape, observationsOf({ front: 3, right: 4, back: 3, left: 4, diagonalAC: 5, diagonalBD: 5 }))
 *   .shape // => { C: { x: 3.0, y: 4.0 }, D: { x: 0.0, y: 4.0 } }
 * @source plane geometry; least squares
 */
export function fitQuadrilateral(family: ShapeFamily, observations: readonly Observation[]): Fit {
  const { length, width } = nominalSize(observations);
  const residualsAt = (parameters: readonly number[]) => {
    const expected = expectedOf(family.corners(parameters), observations);
    return observations.map(({ value }, i) => value - (expected[i] ?? 0));
  };
  let parameters = family.start(length, width);
  let residuals = residualsAt(parameters);
  let slopes = slopesAt(family, parameters, observations);
  let damping = 1e-6;
  for (let step = 0; step < 100 && damping < 1e6; step++) {
    const normal = slopes.map((a, i) => slopes.map((b, k) => dot(a, b) + (i === k ? damping : 0)));
    const move = solve(
      normal,
      slopes.map((slope) => dot(slope, residuals)),
    );
    if (move === undefined) break;
    const next = parameters.map((value, i) => value + (move[i] ?? 0));
    const nextResiduals = residualsAt(next);
    const closer = dot(nextResiduals, nextResiduals) < dot(residuals, residuals);
    if (closer) {
      parameters = next;
      residuals = nextResiduals;
    }
    // The next step would be smaller again by as much as this one was.
    if (Math.hypot(...move) < 1e-7 * length) break;
    if (closer) slopes = slopesAt(family, parameters, observations);
    damping = closer ? Math.max(damping / 10, 1e-12) : damping * 10;
  }
  return {
    shape: family.corners(parameters),
    residuals,
    sensitivity: observations.map((_, row) => slopes.map((slope) => slope[row] ?? 0)),
  };
}
