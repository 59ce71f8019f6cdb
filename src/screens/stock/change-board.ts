import { boards } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';

/** Edits a board as it is stored now. A write that fails is kept and shown by the shell. */
export const changeBoard = (id: string, edit: (now: Board) => Board): void =>
  void boards.change(id, edit).catch(() => {});
