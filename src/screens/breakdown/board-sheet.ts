import { type BoardCuts, boardCuts } from '../../core/breakdown/board-cuts.ts';
import type { BreakdownPlan, BreakdownProblem, RoughBoard } from '../../core/breakdown/problem-types.ts';

/** What is done to one board. */
export interface BoardSheet extends BoardCuts {
  readonly board: RoughBoard;
}

/** The boards that a plan cuts, in the order of the rack, with the cuts that it asks for in order. */
export const boardSheets = (asked: BreakdownProblem, plan: BreakdownPlan): BoardSheet[] =>
  asked.boards.map((board) => ({ board, ...boardCuts(asked, plan, board) })).filter(({ blanks }) => blanks.length > 0);
