import type { ExaggeratedOutline } from '../../core/square/exaggerated-outline.ts';
import type { Point, Quadrilateral } from '../../core/square/quadrilateral.ts';
import { type CornerName, cornerNames, type LineName } from '../../core/square/readings.ts';

/** Width of the drawing, and the room that it leaves around the piece for letters, values and arrows. */
export const drawingWidth = 328;
const edge = 40;
const tallest = 170;
export const arrowLength = 38;

/** Where each line runs, and how far off it its value is written. */
const lines: Readonly<Record<LineName, readonly [from: CornerName, to: CornerName, dx: number, dy: number]>> = {
  front: ['A', 'B', 0, 20],
  right: ['B', 'C', 20, 0],
  back: ['D', 'C', 0, -10],
  left: ['A', 'D', -12, 0],
  diagonalAC: ['A', 'C', 0, -4],
  diagonalBD: ['D', 'B', 0, -4],
};

/** The outline on the drawing: the front edge A to B at the bottom, y counting down. */
export interface PlacedOutline {
  readonly height: number;
  readonly corners: Quadrilateral;
  readonly square: Quadrilateral;
}

/** Fits an outline in mm to the drawing, to one scale both ways. */
export function placeOutline({ corners, square }: Pick<ExaggeratedOutline, 'corners' | 'square'>): PlacedOutline {
  const all = cornerNames.flatMap((name) => [corners[name], square[name]]);
  const [xs, ys] = [all.map(({ x }) => x), all.map(({ y }) => y)];
  const least = { x: Math.min(...xs), y: Math.min(...ys) };
  const size = { x: Math.max(...xs) - least.x, y: Math.max(...ys) - least.y };
  const scale = Math.min((drawingWidth - 2 * edge) / size.x, tallest / size.y);
  const left = (drawingWidth - scale * size.x) / 2;
  const height = scale * size.y + 2 * edge;
  const at = ({ x, y }: Point): Point => ({
    x: left + scale * (x - least.x),
    y: height - edge - scale * (y - least.y),
  });
  const placed = ({ A, B, C, D }: Quadrilateral): Quadrilateral => ({ A: at(A), B: at(B), C: at(C), D: at(D) });
  return { height, corners: placed(corners), square: placed(square) };
}

/** A line with the place of its value: outside along a side, and a third along a diagonal so that the two stay apart. */
export interface PlacedLine extends Point {
  readonly from: Point;
  readonly to: Point;
  /** Degrees, so that the text runs along its line and is never upside down. */
  readonly turn: number;
}

/** Which way it is from one point to another, degrees. */
export const turned = (from: Point, to: Point): number => (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;

export function placeLine(line: LineName, { corners }: PlacedOutline): PlacedLine {
  const [one, other, dx, dy] = lines[line];
  const [from, to] = [corners[one], corners[other]];
  const part = line.startsWith('diagonal') ? 0.3 : 0.5;
  return {
    from,
    to,
    x: from.x + part * (to.x - from.x) + dx,
    y: from.y + part * (to.y - from.y) + dy,
    turn: turned(from, to),
  };
}

/** An arrow beside a corner that moves along a line to (or from) another, clear of the piece. */
export function placeArrow(
  corner: CornerName,
  other: CornerName,
  towards: boolean,
  { corners, height }: PlacedOutline,
): { readonly from: Point; readonly to: Point } {
  const [start, goal] = [corners[corner], corners[other]];
  const length = Math.hypot(goal.x - start.x, goal.y - start.y);
  const along = (px: number) => ({ x: ((goal.x - start.x) * px) / length, y: ((goal.y - start.y) * px) / length });
  // Along a diagonal it begins a little inside; along an edge it lies outside.
  const diagonal = 'AC'.includes(corner) === 'AC'.includes(other);
  const begin = diagonal ? along(6) : { x: 0, y: start.y < height / 2 ? -13 : 13 };
  const near = { x: start.x + begin.x, y: start.y + begin.y };
  const far = { x: near.x + along(arrowLength).x, y: near.y + along(arrowLength).y };
  return towards ? { from: near, to: far } : { from: far, to: near };
}
