import type { Quadrilateral } from './quadrilateral.ts';

/**
 * A family of quadrilaterals: free parameters (all mm) and the corners they give. Fitting a family to the readings
 * asks whether a shape of that kind could have given them.
 */
export interface ShapeFamily {
  /** The parameters of a rectangle of this length and width, where a fit starts. */
  readonly start: (length: number, width: number) => readonly number[];
  readonly corners: (parameters: readonly number[]) => Quadrilateral;
}

type Five = readonly [number, number, number, number, number];

const family = (start: ShapeFamily['start'], corner: (...parameters: Five) => Five) => ({
  start,
  corners: (parameters: readonly number[]): Quadrilateral => {
    const [p = 0, q = 0, r = 0, s = 0, t = 0] = parameters;
    const [bx, cx, cy, dx, dy] = corner(p, q, r, s, t);
    return { A: { x: 0, y: 0 }, B: { x: bx, y: 0 }, C: { x: cx, y: cy }, D: { x: dx, y: dy } };
  },
});

/** Any quadrilateral: B along the front edge, C and D anywhere. */
export const anyShape: ShapeFamily = family(
  (length, width) => [length, length, width, 0, width],
  (bx, cx, cy, dx, dy) => [bx, cx, cy, dx, dy],
);

export const rectangle: ShapeFamily = family(
  (length, width) => [length, width],
  (length, width) => [length, length, width, 0, width],
);

/** Opposite sides equal: both ends lean alike. */
export const parallelogram: ShapeFamily = family(
  (length, width) => [length, 0, width],
  (length, lean, height) => [length, length + lean, height, lean, height],
);

/** Front and back parallel, the left end square, only the right end leaning. */
export const leftEndSquare: ShapeFamily = family(
  (length, width) => [length, 0, width],
  (length, lean, height) => [length, length + lean, height, 0, height],
);

/** Front and back parallel, the ends as they come. */
export const parallelEdges: ShapeFamily = family(
  (length, width) => [length, 0, 0, width],
  (length, leanC, leanD, height) => [length, length + leanC, height, leanD, height],
);

/** The two ends parallel, one longer than the other. */
export const parallelEnds: ShapeFamily = family(
  (length, width) => [length, 0, width, 0],
  (length, lean, height, longer) => {
    const stretch = 1 + longer / Math.hypot(lean, height);
    return [length, length + lean * stretch, height * stretch, lean, height];
  },
);
