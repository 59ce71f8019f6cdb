import type { Quantity } from './quantity.ts';

/**
 * A sentence with quantities in it: `{0}` in the text stands for the first of them, `{{}` for a brace of its own words.
 * The core writes phrases; whoever shows them puts in the maker's units.
 */
export interface Phrase {
  readonly text: string;
  /** By what stands in the braces: the place in the sentence, a name in phrases kept from before. */
  readonly quantities: Readonly<Record<string, Quantity>>;
}

/** A sentence with quantities in it, or one of words alone. */
export type Words = string | Phrase;

/**
 * A phrase as it is read: ``phrase`Rip to ${mm(105)}.` ``. Words and numbers stay as they are, a phrase becomes part of this one.
 *
 * @param words the sentence around what is said in it
 * @param said what stands in it: quantities, words, phrases
 * @returns the phrase
 * @example phrase`Rip to ${mm(105)}.` // => { text: 'Rip to {0}.', quantities: { 0: { value: 105, unit: 'mm' } } }
 */
export function phrase(words: readonly string[], ...said: readonly (Quantity | Words | number)[]): Phrase {
  const quantities: Quantity[] = [];
  const text = words
    .flatMap((word, index) => [word, ...pieces(said[index])])
    // A maker's own word may hold a brace: it must not be taken for a place.
    .map((piece) => (typeof piece === 'string' ? piece.replaceAll('{', '{{}') : `{${quantities.push(piece) - 1}}`));
  return { text: text.join(''), quantities: Object.fromEntries(quantities.entries()) };
}

const pieces = (said: Quantity | Words | number = ''): (string | Quantity)[] => {
  if (typeof said !== 'object') return [`${said}`];
  return 'text' in said ? phrasePieces(said) : [said];
};

/**
 * Sentences one after the other.
 *
 * @param said each a sentence
 * @returns all of them as one phrase
 * @example sentences([phrase`Rip to ${mm(105)}.`, phrase`Mark it.`]).text // => 'Rip to {0}. Mark it.'
 */
export const sentences = (said: readonly Phrase[]): Phrase => said.reduce((before, next) => phrase`${before} ${next}`);

/**
 * A phrase cut at its quantities, in order: plain text, or the quantity that stands there.
 *
 * @param said the phrase
 * @returns its pieces; braces around anything else stay as they stand
 * @example phrasePieces(phrase`Rip to ${mm(105)}.`) // => ['Rip to ', { value: 105, unit: 'mm' }, '.']
 */
export function phrasePieces(said: Phrase): (string | Quantity)[] {
  return said.text
    .split(/\{(\{|\w+)\}/)
    .map((piece, index) => {
      if (index % 2 === 0 || piece === '{') return piece;
      const known = Object.hasOwn(said.quantities, piece) ? said.quantities[piece] : undefined;
      return known ?? `{${piece}}`;
    })
    .filter((piece) => piece !== '');
}
