import { nextChalkMark } from '../../core/lumber/chalk-mark.ts';
import type { MillingInput } from '../../core/milling/milling-input.ts';
import { offcuts } from '../../core/milling/offcuts.ts';
import type { Board } from '../../store/records/board.ts';
import type { Fields } from '../../store/records/record.ts';

/** What the rack gains and loses once the boards of a run are crosscut. */
export interface CutBoards {
  /** Boards that still count as whole. */
  readonly cut: readonly Board[];
  readonly offcuts: readonly Fields<Board>[];
}

/** What is left of a board from a cut on: its taper, and its marks measured from there. */
function endOf({ width, farWidth, length, defects = [] }: Board, cut: number): Partial<Board> {
  const marks = defects.flatMap((mark) => {
    const from = Math.max(0, mark.start - cut);
    const to = mark.start + mark.length - cut;
    return to > from ? { ...mark, start: from, length: to - from } : [];
  });
  return {
    ...(farWidth !== undefined && { width: width + ((farWidth - width) * cut) / length, farWidth }),
    ...(marks.length > 0 && { defects: marks }),
  };
}

/** Boards of a run that the rack still holds as whole, and what is left of them, each with a chalk mark of its own. */
export function cutBoards(input: MillingInput, rack: readonly Board[]): CutBoards {
  const cutFrom = new Set(input.blanks.map(({ board }) => board));
  const cut = rack.filter(({ id, state }) => cutFrom.has(id) && (state === 'rack' || state === 'setAside'));
  const marks = rack.map(({ chalk }) => chalk);
  const left = offcuts(input).flatMap(({ board: id, length, width, start }): Fields<Board>[] => {
    const board = cut.find((one) => one.id === id);
    if (!board) return [];
    const chalk = nextChalkMark([...marks, `${board.chalk}-0`]);
    marks.push(chalk);
    const { species, thickness, readings } = board;
    const offcut = { chalk, species, thickness, width, length, state: 'rack', parentId: id } as const;
    return [{ ...offcut, ...(readings && { readings }), ...(start !== undefined && endOf(board, start)) }];
  });
  return { cut, offcuts: left };
}
