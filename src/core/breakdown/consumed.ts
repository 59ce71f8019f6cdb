import type { BreakdownPlan, BreakdownProblem, RoughBoard } from './problem-types.ts';

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
export const consumed = (asked: BreakdownProblem, plan: BreakdownPlan): number =>
  overLength(asked, plan, ({ width }) => width) / 1e6;

/**
 * The same as the wood that was bought for it: by the boards' rough thickness too.
 *
 * @param asked boards and kerf, mm
 * @param plan blanks, mm
 * @returns m3
 * @valid as of `consumed`
 * @example consumedWood(oneRail, lastPlan(oneRail)) // => 0.00216
 * @source geometry
 */
export const consumedWood = (asked: BreakdownProblem, plan: BreakdownPlan): number =>
  overLength(asked, plan, ({ width, thickness }) => width * thickness) / 1e9;

function overLength(
  { boards, shop }: BreakdownProblem,
  { blanks }: BreakdownPlan,
  across: (board: RoughBoard) => number,
): number {
  const size = new Map(boards.map((board) => [board.id, across(board)]));
  return blanks.reduce((sum, { board, length }) => sum + (size.get(board) ?? 0) * (length + shop.crosscutKerf), 0);
}
