import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { m3PerBoardFoot } from '../../core/answer/us-units.ts';
import { type BoardCost, boardCost } from '../../core/lumber/board-cost.ts';
import { tally } from '../../core/lumber/tally.ts';
import type { Board } from '../../store/records/board.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { inLoggedOrder } from './board-order.ts';
import { pricedUnit } from './priced-unit.ts';

/** What one of the boards of a delivery cost by its price, with its share of the freight. */
export function costInDelivery(
  id: string,
  came: readonly Board[],
  delivery: Delivery,
  usableBoardFeet = 0,
): Outcome<BoardCost> {
  const boards = inLoggedOrder(came);
  const sums = tally(boards);
  if (isProblem(sums)) return sums;
  const figure = pricedUnit(delivery) === 'm3' ? 'exactBoardFeet' : 'boardFeet';
  return boardCost({
    boardFeet: sums.boards[boards.findIndex((board) => board.id === id)]?.[figure].value ?? 0,
    deliveryBoardFeet: sums[figure].value,
    pricePerBoardFoot: delivery.price.amount * (figure === 'boardFeet' ? 1 : m3PerBoardFoot),
    freight: delivery.freight,
    ...(usableBoardFeet > 0 && { usableBoardFeet }),
  });
}
