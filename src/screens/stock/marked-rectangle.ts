import type { Board, Defect } from '../../store/records/board.ts';

type Point = { readonly x: number; readonly y: number };

/** A tap marks a knot of about this size, mm. */
const tapped = { length: 60, width: 40 };
/** Closer than this, mm along and across, nobody marks with a thumb. */
const step = 5;

const widest = ({ width, farWidth = width }: Board) => Math.max(width, farWidth);

/** The rectangle between two points on a board (mm along, mm across), in whole steps and within the board. */
export function markedRectangle(board: Board, from: Point, to: Point): Omit<Defect, 'kind'> {
  const along = span(from.x, to.x, tapped.length, board.length);
  const across = span(from.y, to.y, tapped.width, widest(board));
  return { start: along.from, length: along.size, offset: across.from, width: across.size };
}

function span(a: number, b: number, ifTapped: number, limit: number): { from: number; size: number } {
  const tap = Math.abs(a - b) < step;
  const middle = (a + b) / 2;
  const least = tap ? middle - ifTapped / 2 : Math.min(a, b);
  const most = tap ? middle + ifTapped / 2 : Math.max(a, b);
  const from = Math.max(0, Math.round(least / step) * step);
  const to = Math.min(limit, Math.round(most / step) * step);
  return { from: Math.min(from, Math.max(0, limit - step)), size: Math.max(to - from, Math.min(step, limit)) };
}
