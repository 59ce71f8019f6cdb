import type { LengthUnits } from '../length/length-units.ts';
import { formatQuantity } from './format-quantity.ts';
import { type Phrase, phrasePieces } from './phrase.ts';

/**
 * Says a phrase as plain text, its quantities in the maker's units.
 *
 * @param said the phrase
 * @param units the maker's length units
 * @returns the sentence
 * @example sayPhrase(phrase`Rip to ${mm(146.05)}.`, { unit: 'in', nearest: 16 })
 *   // => 'Rip to 5 3/4 in.'
 */
export function sayPhrase(said: Phrase, units: LengthUnits): string {
  return phrasePieces(said)
    .map((piece) => (typeof piece === 'string' ? piece : formatQuantity(piece, units)))
    .join('');
}
