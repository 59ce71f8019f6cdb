import type { Phrase } from './phrase.ts';
import type { Quantity } from './quantity.ts';
import type { SourceId } from './source-id.ts';
import type { Worked } from './worked.ts';
import { workingStep } from './working-step.ts';

/**
 * A number that is found in one step, with its working.
 *
 * @param finds what the step finds
 * @param by the formula in words
 * @param gives the result with its unit
 * @param sources what it rests on
 * @param holds where the method holds
 * @returns the number with its working
 * @example oneStep('cost', phrase`8 at 9.50`, money(76), ['label']) // => { value: 76 }
 */
export const oneStep = (
  finds: string,
  by: Phrase,
  gives: Quantity,
  sources: readonly SourceId[],
  holds?: Phrase,
): Worked => ({
  value: gives.value,
  working: { steps: [workingStep(finds, by, gives)], sources, ...(holds && { holds }) },
});
