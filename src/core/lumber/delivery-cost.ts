import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { boardFeet, m3, money } from '../answer/quantity.ts';
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
 * Valid where all boards of a delivery have one price.
 * Errors: negative, missing or absurd figures.
 *
 * Example: 103 board feet at 9 and freight 50: 927 + 50 = 977.
 *
 * Source: common practice.
 */
export function deliveryCost({ tallied, unit, price, freight }: DeliveryPrice): Outcome<Worked> {
  const bad =
    badNumber('tallied', 'The tally', tallied, unit, { least: 0 }) ??
    badNumber('price', 'The price', price, 'money', { least: 0, most: 1e6 }) ??
    badNumber('freight', 'The freight', freight, 'money', { least: 0, most: 1e6 });
  if (bad) return bad;
  const value = tallied * price + freight;
  return {
    value,
    working: {
      steps: [
        {
          finds: 'cost by the tally',
          by: phrase('{tallied} × price {price} + freight {freight}', {
            tallied: unit === 'm3' ? m3(tallied) : boardFeet(tallied),
            price: money(price),
            freight: money(freight),
          }),
          gives: money(value),
        },
      ],
      holds: phrase('One price for all boards; taxes are not in it.'),
      sources: ['label', 'common-practice'],
    },
  };
}
