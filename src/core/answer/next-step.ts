import type { Phrase } from './phrase.ts';
import type { Quantity } from './quantity.ts';
import type { SourceId } from './source-id.ts';
import type { Worked } from './worked.ts';
import { workingStep } from './working-step.ts';

/**
 * A result that one more step makes of another: its working goes on where that one ends, and holds where that one holds.
 *
 * @param before what the step starts from
 * @param finds what it finds
 * @param by the formula in words
 * @param gives the result
 * @param sources what the step rests on besides
 * @returns the result with both workings
 * @valid one step more
 * @example nextStep(oneStep('area', phrase`2 × 3`, m2(6), ['geometry']), 'half of it', phrase`area ÷ 2`, m2(3))
 *   // => { value: 3, working: { sources: ['geometry'] } }
 * @source none: it only words
 */
export const nextStep = (
  { working }: Worked<unknown>,
  finds: string,
  by: Phrase,
  gives: Quantity,
  sources: readonly SourceId[] = [],
): Worked => ({
  value: gives.value,
  working: {
    ...working,
    steps: [...working.steps, workingStep(finds, by, gives)],
    sources: [...new Set([...working.sources, ...sources])],
  },
});
