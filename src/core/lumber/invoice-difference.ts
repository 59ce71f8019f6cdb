import { badNumber } from '../answer/bad-number.ts';
import { nextStep } from '../answer/next-step.ts';
import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { count, money, quantity } from '../answer/quantity.ts';
import { sumOf } from '../answer/sum-of.ts';
import { m3PerBoardFoot } from '../answer/us-units.ts';
import type { Worked } from '../answer/worked.ts';
import type { Board } from './board.ts';
import { countedInches } from './quarters.ts';

export interface Invoice {
  /** What the tally found and what the invoice says, both in the unit below. */
  readonly tallied: number;
  readonly invoiced: number;
  readonly unit: 'boardFeet' | 'm3';
  /** Price of one board foot or one cubic metre. */
  readonly price: number;
}

export interface InvoiceDifference {
  /** Invoice less tally: above 0, more is charged than came. */
  readonly volume: Worked;
  readonly money: Worked;
  /** The most that rounding each board can make, either way. */
  readonly roundingBound: Worked;
  readonly roundingExplains: boolean;
}

/** Differences below this many of the unit are none: the noise of binary numbers. */
const noise = 1e-9;

/**
 * The difference between invoice and tally, in volume and money, and whether rounding alone explains it: each board can
 * be off by half a square foot of surface measure, times its thickness in inches.
 *
 * @param invoice tally and invoice in board feet or m3, price of one of these
 * @param boards those of the delivery
 * @returns invoice less tally, its price, the bound, and whether the difference lies within the bound
 * @valid where both sides measured the same boards. Feet dropped from odd lengths and shrinkage since the yard's tally
 *   are no rounding and not in the bound
 * @errors negative or missing figures
 * @example invoiceDifference(
 *   { tallied: 103, invoiced: 110, unit: 'boardFeet', price: 9 },
 *   Array(10).fill({ ...board, width: 152.4 }),
 * ) // => { volume: { value: 7 }, money: { value: 63 }, roundingBound: { value: 10 }, roundingExplains: true }
 * @source the bound follows from the NHLA rule that each board is taken to the nearest whole square foot
 */
export function invoiceDifference(invoice: Invoice, boards: readonly Board[]): Outcome<InvoiceDifference> {
  const { tallied, invoiced, unit, price } = invoice;
  const bad =
    badNumber('tallied', 'The tally', tallied, unit, { least: 0 }) ??
    badNumber('invoiced', 'What the invoice says', invoiced, unit, { least: 0, most: 1e6 }) ??
    badNumber('price', 'The price', price, 'money', { least: 0, most: 1e6 });
  if (bad) return bad;
  const difference = quantity(invoiced - tallied, unit);
  const volume = oneStep(
    'difference',
    phrase`invoice ${quantity(invoiced, unit)} − tally ${quantity(tallied, unit)}`,
    difference,
    ['label', unit === 'm3' ? 'geometry' : 'nhla'],
  );
  const halfFeet = sumOf(boards, (board) => countedInches(board.thickness) / 2);
  const bound = quantity(halfFeet * (unit === 'm3' ? m3PerBoardFoot : 1), unit);
  return {
    volume,
    money: nextStep(volume, 'in money', phrase`difference × price ${money(price)}`, money(difference.value * price)),
    roundingBound: oneStep(
      'what rounding can make',
      phrase`half a square foot × inches thick × ${count(boards.length)} boards`,
      bound,
      ['nhla'],
      phrase`The same boards on both sides; dropped odd feet are not in it.`,
    ),
    roundingExplains: Math.abs(volume.value) <= bound.value + noise,
  };
}
