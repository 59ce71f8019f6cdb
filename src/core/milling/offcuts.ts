import { clearOf } from '../breakdown/clear-stretches.ts';
import { rippedWidth } from '../breakdown/ripped-width.ts';
import { layBlanks } from './lay-blanks.ts';
import type { MillingInput } from './milling-input.ts';

/** What is left of a board once its blanks are cut, in mm. */
export interface Offcut {
  readonly board: string;
  readonly length: number;
  readonly width: number;
  /** Where it begins along the board, of what is left across the whole of it. */
  readonly start?: number;
}

/** Smaller than this nobody puts back into the rack, in mm. */
const least = { length: 300, width: 50 };

/**
 * What goes back into the rack: the end of each board beyond its last blank, and beside the strips of a blank what is
 * clear and wide enough.
 *
 * @param input a checked milling input, mm
 * @returns offcuts of 300 by 50 and more, in the order of the boards
 * @valid a plan that holds
 * @example offcuts(oneShelf) // => [{ board: 'B1', length: 1446.8, width: 180, start: 953.2 }]
 * @source arithmetic; the least size is common practice
 */
export function offcuts(input: MillingInput): Offcut[] {
  const { ripKerf, crosscutKerf } = input.shop;
  const laid = layBlanks(input);
  return input.boards.flatMap((board) => {
    const planned = input.blanks.filter((blank) => blank.board === board.id);
    if (planned.length === 0) return [];
    const cut = [...planned, ...laid.filter((blank) => blank.board.id === board.id)];
    const end = Math.max(...cut.map(({ start, length }) => start + length));
    const beside = planned.map(({ start, length, strips }) => {
      const { width } = clearOf(board, { start }) ?? board;
      return { length, width: width - rippedWidth(strips, ripKerf) - ripKerf };
    });
    const start = end + crosscutKerf;
    return [...beside, { length: board.length - start, width: board.width, start }]
      .filter(({ length, width }) => length >= least.length && width >= least.width)
      .map((rest) => ({ board: board.id, ...rest }));
  });
}
