import { badNumber } from '../answer/bad-number.ts';
import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { money, quantity } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';

export interface DeliveryPrice {
  /** What the tally found, in the unit below. */
  readonly tallied: number;
  readonly unit: 'boardFeet' | 'm3';
  /** Price of one board foot or one cubic metre. */
  readonly price: number;
  readonly freight: number;
}

/**
 * What a delivery should cost by its own tally: wood at the agreed price, and the freight.
 *
 * @param price tally in board feet or m3, price of one of these, freight for the whole
 * @returns the sum in the maker's currency, without taxes
 * @valid where all boards of a delivery have one price
 * @errors negative, missing or absurd figures
 * @example deliveryCost({ tallied: 103, unit: 'boardFeet', price: 9, freight: 50 }) // => { value: 977 }
 * @source common practice
 */
export function deliveryCost({ tallied, unit, price, freight }: DeliveryPrice): Outcome<Worked> {
  const bad =
    badNumber('tallied', 'The tally', tallied, unit, { least: 0 }) ??
    badNumber('price', 'The price', price, 'money', { least: 0, most: 1e6 }) ??
    badNumber('freight', 'The freight', freight, 'money', { least: 0, most: 1e6 });
  if (bad) return bad;
  return oneStep(
    'cost by the tally',
    phrase`${quantity(tallied, unit)} × price ${money(price)} + freight ${money(freight)}`,
    money(tallied * price + freight),
    ['label', 'common-practice'],
    phrase`One price for all boards, without taxes.`,
  );
}
