import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
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
  /** What can be used of this board; left out where it is not known. */
  readonly usableBoardFeet?: number;
}

export interface BoardCost {
  readonly cost: Worked;
  /** Absent where the usable part is not known. */
  readonly perUsableBoardFoot?: Worked;
}

/**
 * What a board cost, with its share of the freight by board feet, and what one usable board foot of it cost.
 *
 * @param price board feet of the board and of the delivery, price, freight
 * @returns the cost in the maker's currency; the costs of all boards add up to wood and freight
 * @valid where wood is priced by the board foot
 * @errors negative or missing figures, a board larger than its delivery, more usable than there is, nothing usable
 * @example boardCost({ boardFeet: 8, deliveryBoardFeet: 100, pricePerBoardFoot: 9, freight: 50, usableBoardFeet: 6 })
 *   // => { cost: { value: 76 }, perUsableBoardFoot: { value: 12.67 } }
 * @source common practice
 */
export function boardCost(price: BoardPrice): Outcome<BoardCost> {
  const { boardFeet, deliveryBoardFeet, pricePerBoardFoot, freight, usableBoardFeet } = price;
  const bad =
    badNumber('boardFeet', 'The board', boardFeet, 'boardFeet', { least: 0 }) ??
    badNumber('deliveryBoardFeet', 'The delivery', deliveryBoardFeet, 'boardFeet', { above: 0 }) ??
    badNumber('pricePerBoardFoot', 'The price', pricePerBoardFoot, 'money', { least: 0, most: 1e6 }) ??
    badNumber('freight', 'The freight', freight, 'money', { least: 0, most: 1e6 }) ??
    badNumber('boardFeet', 'The board', boardFeet, 'boardFeet', { most: deliveryBoardFeet });
  if (bad) return bad;
  const share = (freight * boardFeet) / deliveryBoardFeet;
  const cost = boardFeet * pricePerBoardFoot + share;
  const steps = [
    {
      finds: 'share of the freight',
      by: phrase`freight ${money(freight)} × ${inBoardFeet(boardFeet)} of ${inBoardFeet(deliveryBoardFeet)}`,
      gives: money(share),
    },
    {
      finds: 'cost',
      by: phrase`${inBoardFeet(boardFeet)} × price ${money(pricePerBoardFoot)} + freight ${money(share)}`,
      gives: money(cost),
    },
  ];
  const sources = ['label', 'common-practice'] as const;
  const worked: Worked = { value: cost, working: { steps, sources } };
  if (usableBoardFeet === undefined) return { cost: worked };
  if (usableBoardFeet === 0) return problem('usableBoardFeet', 'Nothing of this board can be used.');
  const badUse = badNumber('usableBoardFeet', 'The usable part', usableBoardFeet, 'boardFeet', { above: 0, most: 1e6 });
  if (badUse) return badUse;
  const perFoot = cost / usableBoardFeet;
  const last = {
    finds: 'per usable board foot',
    by: phrase`${money(cost)} ÷ ${inBoardFeet(usableBoardFeet)}`,
    gives: money(perFoot),
  };
  return { cost: worked, perUsableBoardFoot: { value: perFoot, working: { steps: [...steps, last], sources } } };
}
