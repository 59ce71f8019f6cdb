import type { CornerName, LineName, ReadingName } from './readings.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Corners in mm: A at the origin, B on the x axis, the piece above it. */
export type Quadrilateral = Readonly<Record<CornerName, Point>>;

/** A fit measures thousands of distances, and `Math.hypot` guards against overflow at many times the cost of a root. */
const distance = (from: Point, to: Point): number => Math.sqrt((to.x - from.x) ** 2 + (to.y - from.y) ** 2);

/**
 * The six lengths of a quadrilateral.
 *
 * @param shape its corners, mm
 * @returns sides and diagonals, mm
 * @valid any four corners
 * @example lengthsOf(corners([3, 0], [3, 4], [0, 4]))
 *   // => { front: 3, right: 4, back: 3, left: 4, diagonalAC: 5, diagonalBD: 5 }
 * @source plane geometry
 */
export function lengthsOf({ A, B, C, D }: Quadrilateral): Record<LineName, number> {
  return {
    front: distance(A, B),
    right: distance(B, C),
    back: distance(C, D),
    left: distance(D, A),
    diagonalAC: distance(A, C),
    diagonalBD: distance(B, D),
  };
}

/** What would be read off this shape, mm. */
export function readOff(shape: Quadrilateral, names: readonly ReadingName[]): number[] {
  const lengths = lengthsOf(shape);
  return names.map((name) => (name === 'difference' ? lengths.diagonalAC - lengths.diagonalBD : lengths[name]));
}

function angle(at: Point, from: Point, to: Point): number {
  const [ux, uy, vx, vy] = [from.x - at.x, from.y - at.y, to.x - at.x, to.y - at.y];
  return (Math.atan2(Math.abs(ux * vy - uy * vx), ux * vx + uy * vy) * 180) / Math.PI;
}

/** The inner angles of a convex quadrilateral, degrees. */
export function cornerAngles({ A, B, C, D }: Quadrilateral): Record<CornerName, number> {
  return { A: angle(A, D, B), B: angle(B, A, C), C: angle(C, B, D), D: angle(D, C, A) };
}

/** Whether every corner turns the same way, as the corners of a panel or a case do. */
export function isConvex({ A, B, C, D }: Quadrilateral): boolean {
  const turnsLeft = (p: Point, q: Point, r: Point) => (q.x - p.x) * (r.y - q.y) - (q.y - p.y) * (r.x - q.x) > 0;
  return turnsLeft(A, B, C) && turnsLeft(B, C, D) && turnsLeft(C, D, A) && turnsLeft(D, A, B);
}
