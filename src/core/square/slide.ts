import type { Quadrilateral } from './quadrilateral.ts';

/** How far the back corners must slide along the back edge, mm. */
export interface Slides {
  /** Positive away from D. */
  readonly C: number;
  /** Positive away from C. */
  readonly D: number;
}

/** How much of a step along the back edge runs along the front edge. */
export const backRun = ({ C, D }: Quadrilateral): number => (C.x - D.x) / Math.hypot(C.x - D.x, C.y - D.y);

/**
 * With the front edge kept, how far C and D must slide along the back edge for the angles at B and A to
 * become 90 degrees.
 *
 * @param shape corners in mm with A at the origin and B on the x axis
 * @returns mm; C positive away from D, D positive away from C
 * @valid a back edge that runs along the front edge, at any angle but square to it
 * @example slidesOf(corners([100, 0], [102, 50], [2, 50])) // => { C: -2, D: 2 }
 * @source plane geometry
 */
export function slidesOf(shape: Quadrilateral): Slides {
  const { B, C, D } = shape;
  const run = backRun(shape);
  // + 0 turns a negative zero into a plain one.
  return { C: (B.x - C.x) / run + 0, D: D.x / run + 0 };
}
