import { isProblem, type Outcome, within } from '../answer/problem.ts';
import type { Worked } from '../answer/worked.ts';
import { addedUp, type Sums } from './added-up.ts';
import type { Board } from './board.ts';
import { type BoardFeet, boardFeetByRule } from './board-feet.ts';
import { exactVolume } from './exact-volume.ts';
import type { HalfGoes } from './round-half.ts';

export interface TalliedBoard {
  /** By the rule, with the surface measure. */
  readonly boardFeet: BoardFeet;
  readonly exactBoardFeet: Worked;
  readonly cubicMetres: Worked;
}

export interface Tally extends Sums {
  /** In the order of the boards. */
  readonly boards: readonly TalliedBoard[];
}

/**
 * A delivery's tally: surface measure and board feet by the hardwood rule, and the exact volume.
 *
 * @param boards in the order they were tallied: exact halves go alternately up and down through them, the first one up
 * @returns each board's figures and the sums; sums of 0 for no boards
 * @valid rough hardwood
 * @errors the first bad board, as `boards.3.width`
 * @example tally([board])
 *   // => {
 *     surfaceMeasure: { value: 4 },
 *     boardFeet: { value: 8 },
 *     exactBoardFeet: { value: 8.333 },
 *     cubicMetres: { value: 0.01966 },
 *   }
 * @source NHLA; AHEC guide, measurement; board foot from NIST SP 811
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
    tallied.push({ boardFeet: byRule, exactBoardFeet: exact.boardFeet, cubicMetres: exact.cubicMetres });
  }
  const figures = tallied.map(({ boardFeet, cubicMetres }) => ({
    surfaceMeasure: boardFeet.surfaceMeasure,
    boardFeet: boardFeet.value,
    cubicMetres: cubicMetres.value,
  }));
  return { boards: tallied, ...addedUp(figures) };
}
