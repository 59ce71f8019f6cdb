import type { Outcome } from '../../core/answer/problem.ts';
import { type BoardCost, boardCost } from '../../core/lumber/board-cost.ts';
import { tally } from '../../core/lumber/tally.ts';
import type { Board } from '../../store/records/board.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { inLoggedOrder } from './board-order.ts';
import { inBoardFeet, pricedUnit } from './priced-unit.ts';

/** What one of the boards of a delivery cost by its price, with its share of the freight. */
export function costInDelivery(
  id: string,
  came: readonly Board[],
  delivery: Delivery,
  usableBoardFeet = 0,
): Outcome<BoardCost> {
  const sums = tally(inLoggedOrder(came));
  const own = sums.boards.find(({ board }) => board.id === id);
  const figure = pricedUnit(delivery) === 'm3' ? 'cubicMetres' : 'boardFeet';
  const perUnit = inBoardFeet(delivery);
  return boardCost({
    boardFeet: (own?.[figure] ?? 0) * perUnit,
    deliveryBoardFeet: sums[figure].value * perUnit,
    pricePerBoardFoot: delivery.price.amount / perUnit,
    freight: delivery.freight,
    usableBoardFeet,
  });
}
