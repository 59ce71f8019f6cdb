import type { BreakdownPlan, BreakdownProblem } from './problem-types.ts';

/**
 * The board that a plan consumes: board width by blank length and kerf, summed.
 *
 * @param asked boards and kerf, mm
 * @param plan blanks, mm
 * @returns m2
 * @valid any plan; blanks of boards that are not there count nothing
 * @example consumed(oneRail, lastPlan(oneRail)) // => 0.08
 * @source the statement of the problem
 */
export function consumed({ boards, shop }: BreakdownProblem, { blanks }: BreakdownPlan): number {
  const width = new Map(boards.map((board) => [board.id, board.width]));
  return (
    blanks.reduce((sum, { board, length }) => sum + (width.get(board) ?? 0) * (length + shop.crosscutKerf), 0) / 1e6
  );
}
