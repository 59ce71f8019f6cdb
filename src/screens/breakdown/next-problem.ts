import type { Blank, BreakdownProblem, CutBlank, RoughBoard, Wishes } from '../../core/breakdown/problem-types.ts';
import { replan } from '../../core/breakdown/replan.ts';
import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import type { Shop } from '../../store/records/shop.ts';
import { inLoggedOrder } from '../stock/board-order.ts';
import { cutStrips } from './cut-state.ts';
import { problemFromRecords } from './problem-from-records.ts';
import { solvedProblem } from './solved-problem.ts';

/**
 * What to ask the planner next: the piece, rack and shop as they are now, around what is cut already under a plan.
 * Boards that blanks were cut from are taken as that plan had them, so that its positions still hold.
 */
export function nextProblem(
  shop: Shop,
  rack: readonly Board[],
  piece: Piece,
  wishes: Wishes,
  plan: Plan | undefined,
): BreakdownProblem {
  const fresh = problemFromRecords(shop, rack, piece, wishes);
  if (!plan) return fresh;
  // Strips that are spoilt say so themselves.
  const cut = plan.blanks
    .map((blank): CutBlank => ({ ...blank, strips: blank.strips.slice(0, cutStrips(plan, blank)) }))
    .filter(({ strips }) => strips.length > 0);
  const begun = solvedProblem(plan).boards.filter(({ id }) => cut.some(({ board }) => board === id));
  if (begun.length === 0) return fresh;
  const usable = [
    ...begun.map((board) => (hasOffcuts(board, rack) ? withoutRest(board, plan.blanks) : board)),
    ...fresh.boards.filter(({ id }) => !begun.some((board) => board.id === id)),
  ];
  // Neighbours stay neighbours, cut or not.
  const boards = inLoggedOrder(rack).flatMap(({ id }) => usable.find((board) => board.id === id) ?? []);
  const gone = usable.filter(({ id }) => !rack.some((board) => board.id === id));
  return replan({ ...fresh, boards: [...boards, ...gone] }, cut);
}

/** What was left of the board lies in the rack under a mark of its own, and is not to be counted twice. */
const hasOffcuts = ({ id }: RoughBoard, rack: readonly Board[]) => rack.some(({ parentId }) => parentId === id);

function withoutRest(board: RoughBoard, blanks: readonly Blank[]): RoughBoard {
  const whole = { start: 0, length: board.length, offset: 0, width: board.width };
  const taken = blanks.filter((blank) => blank.board === board.id);
  return {
    ...board,
    clear: taken.map(({ start, length }) => {
      const stretch = (board.clear ?? [whole]).find((clear) => start < clear.start + clear.length) ?? whole;
      return { ...stretch, start, length };
    }),
  };
}
