import { type Matrix, solve } from './linear.ts';
import { type Quadrilateral, readOff } from './quadrilateral.ts';
import { measuredNames, type Readings } from './readings.ts';
import type { ShapeFamily } from './shape-family.ts';

/** The shape of a family that comes nearest to what was measured. */
export interface Fit {
  readonly shape: Quadrilateral;
  /** Measured less fitted, mm, one for each reading in the order of `readingNames`. */
  readonly residuals: readonly number[];
  /** How each reading answers to each parameter of the family, mm per mm. */
  readonly sensitivity: Matrix;
}

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);

/** Length and width, mm, of the rectangle that these readings suggest: where a fit starts. */
function nominalSize(readings: Readings): readonly [length: number, width: number] {
  const diagonal = readings.diagonalAC ?? readings.diagonalBD;
  const front = readings.front ?? readings.back;
  const side = readings.right ?? readings.left;
  const other = (known: number | undefined) => {
    if (diagonal === undefined) return known ?? 1;
    return known === undefined
      ? diagonal / Math.SQRT2
      : Math.sqrt(Math.max(diagonal ** 2 - known ** 2, (known / 100) ** 2));
  };
  return [front ?? other(side), side ?? other(front)];
}

/**
 * The shape of a family nearest to the readings by least squares (Gauss-Newton, damped after
 * Levenberg and Marquardt). With fewer readings than parameters it stays as near to a rectangle as they let it.
 *
 * @param family a shape family
 * @param readings mm, at least one
 * @returns the corners in mm, A at the origin and B on the x axis; the residuals in mm
 * @valid pieces of 50 mm to 6 m that are near enough to a rectangle to have their corners in order; it ends after 100
 *   steps at the best shape found
 * @example fitQuadrilateral(anyShape, { front: 3, right: 4, back: 3, left: 4, diagonalAC: 5, diagonalBD: 5 }).shape
 *   // => { C: { x: 3.0, y: 4.0 }, D: { x: 0.0, y: 4.0 } }
 * @source plane geometry; least squares
 */
export function fitQuadrilateral(family: ShapeFamily, readings: Readings): Fit {
  const names = measuredNames(readings);
  const [length, width] = nominalSize(readings);
  const residualsAt = (parameters: readonly number[]) => {
    const expected = readOff(family.corners(parameters), names);
    return names.map((name, i) => (readings[name] ?? 0) - (expected[i] ?? 0));
  };
  // How each parameter, a row, moves the readings. By differences: the lengths are smooth, and a step of a ten-millionth of the
  // piece is far above rounding.
  const slopesAt = (at: readonly number[], residuals: readonly number[]): Matrix => {
    const step = 1e-7 * Math.max(...at.map(Math.abs));
    return at.map((value, index) =>
      residualsAt(at.with(index, value + step)).map((moved, row) => ((residuals[row] ?? 0) - moved) / step),
    );
  };
  let parameters = family.start(length, width);
  let residuals = residualsAt(parameters);
  let slopes = slopesAt(parameters, residuals);
  let damping = 1e-6;
  for (let step = 0; step < 100 && damping < 1e6; step++) {
    const normal = slopes.map((a, i) => slopes.map((b, k) => dot(a, b) + (i === k ? damping : 0)));
    const move = solve(
      normal,
      slopes.map((slope) => dot(slope, residuals)),
    );
    const next = parameters.map((value, i) => value + (move[i] ?? 0));
    const nextResiduals = residualsAt(next);
    const closer = dot(nextResiduals, nextResiduals) < dot(residuals, residuals);
    if (closer) {
      parameters = next;
      residuals = nextResiduals;
    }
    // The next step would be smaller again by as much as this one was.
    if (Math.hypot(...move) < 1e-7 * length) break;
    if (closer) slopes = slopesAt(parameters, residuals);
    damping = closer ? Math.max(damping / 10, 1e-12) : damping * 10;
  }
  return {
    shape: family.corners(parameters),
    residuals,
    sensitivity: names.map((_, row) => slopes.map((slope) => slope[row] ?? 0)),
  };
}
