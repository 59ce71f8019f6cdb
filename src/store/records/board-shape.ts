import type { Outcome } from '../../core/answer/problem.ts';
import { assumedWarp } from '../../core/breakdown/assumed-warp.ts';
import type { ClearStretch } from '../../core/breakdown/problem-types.ts';
import { narrowestWidth } from '../../core/lumber/board-width.ts';
import { findClearStretches, type StretchWish } from '../../core/lumber/find-clear-stretches.ts';
import { roughThickness } from '../../core/lumber/quarters.ts';
import type { Board } from './board.ts';

/** A stored board as planning and milling see it, mm; warp that nobody has measured is assumed (`core/breakdown/assumed-warp.ts`). */
export function roughShape(board: Board) {
  const width = narrowestWidth(board);
  const assumed = assumedWarp(width, board.length);
  return {
    thickness: roughThickness(board.thickness),
    width,
    length: board.length,
    cup: board.warp?.cup ?? assumed.cup.value,
    bow: board.warp?.bow ?? assumed.bow.value,
    twist: board.warp?.twist ?? 0,
  };
}

/** The clear rectangles that remain between the marks on a board; the whole of it where nothing is marked. */
export function clearStretchesOf(board: Board, wish: StretchWish): Outcome<ClearStretch[]> {
  const marks = (board.defects ?? []).map(({ start, length, offset, width }) => ({
    from: start,
    to: start + length,
    left: offset,
    right: offset + width,
  }));
  return findClearStretches(board, marks, wish);
}
