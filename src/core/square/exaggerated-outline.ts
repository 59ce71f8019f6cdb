import type { Quadrilateral } from './quadrilateral.ts';
import type { CornerName } from './readings.ts';
import { rectangle } from './shape-family.ts';

/** A drawing of the piece with its error made larger. */
export interface ExaggeratedOutline {
  readonly corners: Quadrilateral;
  /** The rectangle that it is compared with. */
  readonly square: Quadrilateral;
  /** How many times the error is drawn; to be stated beside the drawing. */
  readonly factor: number;
}

/** The largest of 1, 2, 5, 10, 20, 50 ... that is not above. */
function roundFactor(most: number): number {
  const decade = 10 ** Math.floor(Math.log10(most));
  const lead = [5, 2, 1].find((step) => step * decade <= most * (1 + 1e-12)) ?? 1;
  return Math.max(1, lead * decade);
}

/**
 * The outline to draw, the piece to scale and its departure from a rectangle exaggerated.
 *
 * @param shape corners in mm, A at the origin and B on the x axis
 * @returns corners in mm and the factor: a round number with which the worst corner moves a twelfth of the shorter side
 *   at most; 1 when it departs by more than that, and when the piece is exactly square
 * @valid any convex shape
 * @example exaggeratedOutline(corners([1800, 0], [1801, 800], [0, 800]))
 *   // => { factor: 50, corners: { C: { x: 1850.0 } } }
 * @source assumption: a twelfth of the shorter side shows and still looks like the piece
 */
export function exaggeratedOutline(shape: Quadrilateral): ExaggeratedOutline {
  const { B, C, D } = shape;
  const width = (C.y + D.y) / 2;
  const square = rectangle.corners([B.x, width]);
  const worst = Math.max(Math.hypot(C.x - B.x, C.y - width), Math.hypot(D.x, D.y - width));
  const factor = worst < 1e-6 ? 1 : roundFactor(Math.min(B.x, width) / 12 / worst);
  const drawn = (name: CornerName) => ({
    x: square[name].x + factor * (shape[name].x - square[name].x),
    y: square[name].y + factor * (shape[name].y - square[name].y),
  });
  return { corners: { A: drawn('A'), B: drawn('B'), C: drawn('C'), D: drawn('D') }, square, factor };
}
