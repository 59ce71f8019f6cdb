import { nextStep } from '../answer/next-step.ts';
import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { boardFeet, m3, mm } from '../answer/quantity.ts';
import { m3PerBoardFoot } from '../answer/us-units.ts';
import type { Worked } from '../answer/worked.ts';
import type { Board } from './board.ts';
import { meanWidth } from './board-width.ts';
import { checkBoard } from './check-board.ts';
import { roughThickness } from './quarters.ts';

/** A volume in m3 as board feet. */
export const asBoardFeet = (cubicMetres: Worked): Worked =>
  nextStep(
    cubicMetres,
    'board feet',
    phrase`volume ÷ 144 cubic inches`,
    boardFeet(cubicMetres.value / m3PerBoardFoot),
    ['nist-sp811'],
  );

/**
 * A board's volume as it is: thickness × mean width × length.
 *
 * @param board sizes in mm
 * @returns m3
 * @valid straight boards and even tapers
 * @example cubicMetresOf(board) // => 0.01966
 * @source geometry
 */
export const cubicMetresOf = (board: Board): number =>
  roughThickness(board.thickness) * meanWidth(board) * board.length * 1e-9;

export interface ExactVolume {
  readonly cubicMetres: Worked;
  readonly boardFeet: Worked;
}

/**
 * The volume of a board as it is, without any rule of the trade: thickness times mean width times length.
 *
 * @param board sizes in mm; a thickness in quarters is taken as that many quarters of an inch
 * @returns cubic metres, and the same in board feet
 * @valid straight boards and even tapers
 * @errors those of `checkBoard`
 * @example exactVolume(board) // => { cubicMetres: { value: 0.01966 }, boardFeet: { value: 8.333 } }
 * @source geometry; board foot from NIST SP 811 appendix B
 */
export function exactVolume(board: Board): Outcome<ExactVolume> {
  const [bad] = checkBoard(board);
  if (bad) return bad;
  const cubicMetres = oneStep(
    'volume',
    phrase`thickness ${mm(roughThickness(board.thickness))} × ${board.farWidth === undefined ? 'width' : 'mean width of both ends'} ${mm(meanWidth(board))} × length ${mm(board.length)}`,
    m3(cubicMetresOf(board)),
    ['geometry'],
    phrase`Straight boards and even tapers.`,
  );
  return { cubicMetres, boardFeet: asBoardFeet(cubicMetres) };
}
