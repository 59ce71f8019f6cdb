import { phrase } from '../answer/phrase.ts';
import { count, type Quantity } from '../answer/quantity.ts';
import type { SourceId } from '../answer/source-id.ts';
import type { Worked } from '../answer/worked.ts';

/**
 * A figure of several boards added up.
 *
 * @param finds what the figure is, for example `board feet`
 * @param values one for each board, in the unit
 * @param unit makes a quantity of the sum
 * @param sources what the boards' figures rest on
 * @returns the sum, in the unit; 0 for no boards
 * Valid for any figures that add up.
 *
 * Example: `addedUp('board feet', [8, 6], boardFeet, ['nhla'])` is 14 board feet.
 *
 * Source: as given.
 */
export function addedUp(
  finds: string,
  values: readonly number[],
  unit: (value: number) => Quantity,
  sources: readonly SourceId[],
): Worked {
  const value = values.reduce((total, one) => total + one, 0);
  const by = phrase(`${finds} of {boards} boards added up`, { boards: count(values.length) });
  return { value, working: { steps: [{ finds, by, gives: unit(value) }], sources } };
}
