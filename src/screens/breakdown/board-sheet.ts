import { type BoardCuts, boardCuts, type CutOfBlank } from '../../core/breakdown/board-cuts.ts';
import type { BreakdownProblem, RoughBoard } from '../../core/breakdown/problem-types.ts';
import type { Plan, PlanBlank, PlanStrip } from '../../store/records/plan.ts';

/** One blank of a board, with the letter it goes by at the bench. */
export interface SheetBlank extends CutOfBlank {
  readonly blank: PlanBlank;
  readonly letter: string;
  /** In the order in which they are ripped, with their places in the blank. */
  readonly strips: readonly { readonly at: number; readonly strip: PlanStrip }[];
}

/** What is done to one board. */
export interface BoardSheet extends BoardCuts {
  readonly board: RoughBoard;
  readonly blanks: readonly SheetBlank[];
}

/** A, B, C along the board. */
export const letterOf = (plan: Pick<Plan, 'blanks'>, blankAt: number): string => {
  const { board, start } = plan.blanks[blankAt] as PlanBlank;
  const place = plan.blanks.filter((other) => other.board === board && other.start < start).length;
  return String.fromCharCode(65 + (place % 26)) + (place < 26 ? '' : Math.floor(place / 26) + 1);
};

/** The boards that a plan cuts, in the order of the rack, with the cuts that it asks for in order. */
export const boardSheets = (asked: BreakdownProblem, plan: Pick<Plan, 'blanks' | 'short'>): BoardSheet[] =>
  asked.boards
    .map((board) => {
      const cuts = boardCuts(asked, plan, board.id);
      const blanks = cuts.blanks.map((one) => ({
        ...one,
        letter: letterOf(plan, one.at),
        strips: one.blank.strips.map((strip, at) => ({ at, strip })).sort((a, b) => b.strip.width - a.strip.width),
      }));
      return { board, ...cuts, blanks };
    })
    .filter(({ blanks }) => blanks.length > 0);
