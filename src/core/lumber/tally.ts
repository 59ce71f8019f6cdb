import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome, within } from '../answer/problem.ts';
import { boardFeet, count, m3, type Quantity } from '../answer/quantity.ts';
import type { SourceId } from '../answer/source-id.ts';
import type { Worked } from '../answer/worked.ts';
import type { Board } from './board.ts';
import { type BoardFeet, boardFeetByRule } from './board-feet.ts';
import { type ExactVolume, exactVolume } from './exact-volume.ts';
import type { HalfGoes } from './round-half.ts';

export interface TalliedBoard {
  /** By the rule, with the surface measure. */
  readonly boardFeet: BoardFeet;
  readonly exact: ExactVolume;
}

export interface Tally {
  /** In the order of the boards. */
  readonly boards: readonly TalliedBoard[];
  /** Whole square feet, all boards. */
  readonly surfaceMeasure: Worked;
  readonly boardFeet: Worked;
  readonly exactBoardFeet: Worked;
  readonly cubicMetres: Worked;
}

/**
 * A delivery's tally: surface measure and board feet by the hardwood rule, and the exact volume.
 *
 * @param boards in the order they were tallied: exact halves go alternately up and down through them, the first one up
 * @returns each board's figures and the sums; sums of 0 for no boards
 * Valid for rough hardwood.
 * Errors: the first bad board, as `boards.3.width`.
 *
 * Example: one 8/4 board of 158.75 by 2438.4 mm: surface measure 4, 8 board feet, exactly 8.333, 0.01966 m3.
 *
 * Source: NHLA; AHEC guide, measurement; board foot from NIST SP 811.
 */
export function tally(boards: readonly Board[]): Outcome<Tally> {
  const tallied: TalliedBoard[] = [];
  let halfGoes: HalfGoes = 'up';
  for (const [index, board] of boards.entries()) {
    const byRule = boardFeetByRule(board, halfGoes);
    const exact = exactVolume(board);
    if (isProblem(byRule)) return within(byRule, `boards.${index}`);
    if (isProblem(exact)) return within(exact, `boards.${index}`);
    halfGoes = byRule.halfGoes;
    tallied.push({ boardFeet: byRule, exact });
  }
  return {
    boards: tallied,
    surfaceMeasure: sum('surface measure', tallied, (board) => board.boardFeet.surfaceMeasure, count, ['nhla']),
    boardFeet: sum('board feet', tallied, (board) => board.boardFeet.value, boardFeet, ['nhla']),
    exactBoardFeet: sum('exact board feet', tallied, (board) => board.exact.boardFeet.value, boardFeet, [
      'geometry',
      'nist-sp811',
    ]),
    cubicMetres: sum('volume', tallied, (board) => board.exact.cubicMetres.value, m3, ['geometry']),
  };
}

function sum(
  finds: string,
  boards: readonly TalliedBoard[],
  of: (board: TalliedBoard) => number,
  unit: (value: number) => Quantity,
  sources: readonly SourceId[],
): Worked {
  const value = boards.reduce((total, board) => total + of(board), 0);
  const by = phrase(`${finds} of {boards} boards added up`, { boards: count(boards.length) });
  return { value, working: { steps: [{ finds, by, gives: unit(value) }], sources } };
}
