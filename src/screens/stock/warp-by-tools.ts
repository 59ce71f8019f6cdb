import { isProblem } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { narrowestWidth } from '../../core/lumber/board-width.ts';
import { depthByStraightedge } from '../../core/square/depth-by-straightedge.ts';
import { twistBySticks } from '../../core/square/twist-by-sticks.ts';
import type { Board, Warp, WarpTools } from '../../store/records/board.ts';

type Found = { readonly [kind in keyof Warp]?: Worked };

/** What the tools' own errors make of the warp that was seen; a string, and a tool that is not known, are true. */
export function warpByTools(board: Board): Found {
  const { seen = {}, tools = {} } = board;
  const width = narrowestWidth(board);
  const by = (depth: number | undefined, find: (depth: number) => ReturnType<typeof twistBySticks>) => {
    const found = depth === undefined ? undefined : find(depth);
    return found === undefined || isProblem(found) ? undefined : found;
  };
  const { straightedge, sticks } = tools;
  const cup = straightedge && by(seen.cup, (depth) => depthByStraightedge(depth, width, straightedge));
  const bow = straightedge && by(seen.bow, (depth) => depthByStraightedge(depth, board.length, straightedge));
  const twist = sticks && by(seen.twist, (depth) => twistBySticks(depth, width, sticks));
  return { ...(cup && { cup }), ...(bow && { bow }), ...(twist && { twist }) };
}

/** The board with its warp as it was seen, by these tools: what the tools add or hide is put right. */
export function withWarp(board: Board, seen: Warp, tools: WarpTools): Board {
  const next = { ...board, seen, tools };
  const right = Object.entries(warpByTools(next)).map(([kind, { value }]) => [kind, value]);
  return { ...next, warp: { ...seen, ...Object.fromEntries(right) } };
}
