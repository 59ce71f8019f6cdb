import type { Phrase } from './phrase.ts';
import type { Quantity } from './quantity.ts';
import type { SourceId } from './source-id.ts';
import type { Worked } from './worked.ts';

/**
 * A number that is found in one step, with its working.
 *
 * Example: `oneStep('cost', phrase('8 at 9.50'), money(76), ['label'])` has the value 76.
 */
export const oneStep = (
  finds: string,
  by: Phrase,
  gives: Quantity,
  sources: readonly SourceId[],
  holds?: Phrase,
): Worked => ({
  value: gives.value,
  working: { steps: [{ finds, by, gives }], sources, ...(holds && { holds }) },
});
