import { isProblem, type Outcome, problem, within } from '../core/answer/problem.ts';
import type { Board } from '../core/lumber/board.ts';
import { checkBoard } from '../core/lumber/check-board.ts';
import { tally } from '../core/lumber/tally.ts';
import type { Figure } from './ask.ts';

/** `{"boards": [{"quarters": 8, "width": 158.75, "length": 2438.4}]}`; instead of quarters a measured `thickness`; `farWidth` of a taper. */
export const figure: Figure = (input) => {
  const { boards: given } = input as Record<string, unknown>;
  if (!Array.isArray(given)) return problem('boards', 'boards must be a list.');
  const boards: Board[] = [];
  for (const [index, item] of given.entries()) {
    const board = readBoard(item, `boards.${index}`);
    if (isProblem(board)) return board;
    const [bad] = checkBoard(board);
    if (bad) return within(bad, `boards.${index}`);
    boards.push(board);
  }
  const found = tally(boards);
  return {
    surfaceMeasure: found.boards.map((board) => board.surfaceMeasure),
    boardFeet: found.boardFeet.value,
    exactBoardFeet: found.exactBoardFeet.value,
    cubicMetres: found.cubicMetres.value,
  };
};

/** Types only; whether the sizes make sense is the core's to say. */
function readBoard(item: unknown, at: string): Outcome<Board> {
  if (typeof item !== 'object' || item === null) return problem(at, 'A board must be an object.');
  const { quarters, thickness, width, farWidth, length } = item as Record<string, unknown>;
  if (typeof width !== 'number') return problem(`${at}.width`, 'width must be a number, in mm.');
  if (typeof length !== 'number') return problem(`${at}.length`, 'length must be a number, in mm.');
  if (farWidth !== undefined && typeof farWidth !== 'number')
    return problem(`${at}.farWidth`, 'farWidth must be a number, in mm.');
  const size = { width, length, ...(farWidth !== undefined && { farWidth }) };
  if (typeof quarters === 'number' && thickness === undefined) return { ...size, thickness: { quarters } };
  if (typeof thickness === 'number' && quarters === undefined) return { ...size, thickness: { mm: thickness } };
  return problem(`${at}.quarters`, 'Give the thickness either as quarters or as thickness in mm, a number.');
}
