import type { ExaggeratedOutline } from '../../core/square/exaggerated-outline.ts';
import type { Point, Quadrilateral } from '../../core/square/quadrilateral.ts';
import type { CornerName, LineName } from '../../core/square/readings.ts';

/** Width of the drawing, and the room that it leaves around the piece for letters, values and arrows. */
export const drawingWidth = 328;
const edge = 40;
const tallest = 170;

export const cornerNames: readonly CornerName[] = ['A', 'B', 'C', 'D'];

export const lineEnds: Readonly<Record<LineName, readonly [CornerName, CornerName]>> = {
  front: ['A', 'B'],
  right: ['B', 'C'],
  back: ['D', 'C'],
  left: ['A', 'D'],
  diagonalAC: ['A', 'C'],
  diagonalBD: ['D', 'B'],
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
  const least = { x: Math.min(...all.map(({ x }) => x)), y: Math.min(...all.map(({ y }) => y)) };
  const size = {
    x: Math.max(...all.map(({ x }) => x)) - least.x,
    y: Math.max(...all.map(({ y }) => y)) - least.y,
  };
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

export interface PlacedText extends Point {
  /** Degrees, so that the text runs along its line and is never upside down. */
  readonly turn: number;
}

/** Where the value of a line is written: outside along a side, and a third along a diagonal so that the two stay apart. */
export function placeValue(line: LineName, { corners }: PlacedOutline): PlacedText {
  const [from, to] = lineEnds[line].map((name) => corners[name]) as [Point, Point];
  const part = line.startsWith('diagonal') ? 0.3 : 0.5;
  const on = { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
  const off = {
    front: [0, 20],
    back: [0, -10],
    left: [-12, 0],
    right: [20, 0],
    diagonalAC: [0, -4],
    diagonalBD: [0, -4],
  };
  const [dx = 0, dy = 0] = off[line];
  return {
    x: on.x + dx,
    y: on.y + dy,
    turn: (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI,
  };
}

/** An arrow beside a corner that moves along a line to (or from) another, clear of the piece. */
export function placeArrow(
  corner: CornerName,
  other: CornerName,
  towards: boolean,
  { corners, height }: PlacedOutline,
): { readonly from: Point; readonly to: Point } {
  const start = corners[corner];
  const goal = corners[other];
  const length = Math.hypot(goal.x - start.x, goal.y - start.y);
  const run = { x: (goal.x - start.x) / length, y: (goal.y - start.y) / length };
  const diagonal = (corner === 'A' || corner === 'C') === (other === 'A' || other === 'C');
  const clear = diagonal ? 0 : start.y < height / 2 ? -13 : 13;
  const near = { x: start.x + (diagonal ? 6 * run.x : 0), y: start.y + clear + (diagonal ? 6 * run.y : 0) };
  const far = { x: near.x + 38 * run.x, y: near.y + 38 * run.y };
  return towards ? { from: near, to: far } : { from: far, to: near };
}
