import { badNumber } from '../answer/bad-number.ts';
import { nextStep } from '../answer/next-step.ts';
import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { boardFeet as inBoardFeet, money } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';

export interface BoardPrice {
  /** Of this board, by the measure that the price is for. */
  readonly boardFeet: number;
  /** Of the whole delivery, by the same measure. */
  readonly deliveryBoardFeet: number;
  readonly pricePerBoardFoot: number;
  /** For the whole delivery. */
  readonly freight: number;
  /** What can be used of this board; 0, or left out, where that is nothing or not known. */
  readonly usableBoardFeet?: number;
}

export interface BoardCost {
  readonly cost: Worked;
  /** Absent where nothing is known to be usable. */
  readonly perUsableBoardFoot?: Worked;
}

/**
 * What a board cost, with its share of the freight by board feet, and what one usable board foot of it cost.
 *
 * @param price board feet of the board and of the delivery, price, freight
 * @returns the cost in the maker's currency; the costs of all boards add up to wood and freight
 * @valid where wood is priced by the board foot
 * @errors negative or missing figures, a board larger than its delivery
 * @example boardCost({ boardFeet: 8, deliveryBoardFeet: 100, pricePerBoardFoot: 9, freight: 50, usableBoardFeet: 6 })
 *   // => { cost: { value: 76 }, perUsableBoardFoot: { value: 12.67 } }
 * @source common practice
 */
export function boardCost(price: BoardPrice): Outcome<BoardCost> {
  const { boardFeet, deliveryBoardFeet, pricePerBoardFoot, freight, usableBoardFeet = 0 } = price;
  const bad =
    badNumber('boardFeet', 'The board', boardFeet, 'boardFeet', { least: 0 }) ??
    badNumber('deliveryBoardFeet', 'The delivery', deliveryBoardFeet, 'boardFeet', { above: 0 }) ??
    badNumber('pricePerBoardFoot', 'The price', pricePerBoardFoot, 'money', { least: 0, most: 1e6 }) ??
    badNumber('freight', 'The freight', freight, 'money', { least: 0, most: 1e6 }) ??
    badNumber('boardFeet', 'The board', boardFeet, 'boardFeet', { most: deliveryBoardFeet }) ??
    badNumber('usableBoardFeet', 'The usable part', usableBoardFeet, 'boardFeet', { least: 0, most: 1e6 });
  if (bad) return bad;
  const share = money((freight * boardFeet) / deliveryBoardFeet);
  const board = inBoardFeet(boardFeet);
  const ofFreight = oneStep(
    'share of the freight',
    phrase`freight ${money(freight)} × ${board} of ${inBoardFeet(deliveryBoardFeet)}`,
    share,
    ['label', 'common-practice'],
  );
  const cost = nextStep(
    ofFreight,
    'cost',
    phrase`${board} × price ${money(pricePerBoardFoot)} + freight ${share}`,
    money(boardFeet * pricePerBoardFoot + share.value),
  );
  if (!usableBoardFeet) return { cost };
  const perUsableBoardFoot = nextStep(
    cost,
    'per usable board foot',
    phrase`${money(cost.value)} ÷ ${inBoardFeet(usableBoardFeet)}`,
    money(cost.value / usableBoardFeet),
  );
  return { cost, perUsableBoardFoot };
}
