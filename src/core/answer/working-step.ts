import type { Phrase } from './phrase.ts';
import type { Quantity } from './quantity.ts';
import type { WorkingStep } from './worked.ts';

/**
 * One step of a working.
 *
 * @param finds what it finds
 * @param by the formula in words, with the quantities that go into it
 * @param gives what comes out, with its unit
 * @returns the step
 * @valid any step
 * @example workingStep('cost', phrase`8 at 9.50`, money(76)) // => { finds: 'cost', gives: { value: 76 } }
 * @source none: it only words
 */
export const workingStep = (finds: string, by: Phrase, gives: Quantity): WorkingStep => ({ finds, by, gives });
