import { isProblem } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { narrowestWidth } from '../../core/lumber/board-width.ts';
import { depthByStraightedge } from '../../core/square/depth-by-straightedge.ts';
import { twistBySticks } from '../../core/square/twist-by-sticks.ts';
import type { Board, Warp, WarpTools } from '../../store/records/board.ts';

type Found = { readonly [kind in keyof Warp]?: Worked };

/** What the tools' own errors make of the warp that was seen; a string, and a tool that is not known, are true. */
export function warpByTools(board: Board): Found {
  const { seen: { cup, bow, twist } = {}, tools: { straightedge, sticks } = {}, length } = board;
  const width = narrowestWidth(board);
  const found = {
    cup: straightedge && cup !== undefined && depthByStraightedge(cup, width, straightedge),
    bow: straightedge && bow !== undefined && depthByStraightedge(bow, length, straightedge),
    twist: sticks && twist !== undefined && twistBySticks(twist, width, sticks),
  };
  return Object.fromEntries(Object.entries(found).filter(([, one]) => one && !isProblem(one)));
}

/** The board with its warp as it was seen, by these tools: what the tools add or hide is put right. */
export function withWarp(board: Board, seen: Warp, tools: WarpTools): Board {
  const next = { ...board, seen, tools };
  const right = Object.entries(warpByTools(next)).map(([kind, { value }]) => [kind, value]);
  return { ...next, warp: { ...seen, ...Object.fromEntries(right) } };
}
