import type { Quantity } from './quantity.ts';

/**
 * A sentence with quantities in it: `{name}` in the text stands for the quantity of that name.
 * The core writes phrases; whoever shows them puts in the maker's units.
 *
 * Example: `phrase('Rip to {width}.', { width: mm(105.4) })`.
 */
export interface Phrase {
  readonly text: string;
  readonly quantities: Readonly<Record<string, Quantity>>;
}

/**
 * A phrase from its text and the quantities that it names.
 *
 * @param text with `{name}` where a quantity stands
 * @param quantities by name
 * @returns the phrase
 * @example phrase('Rip to {width}.', { width: mm(105) }).quantities // => { width: { value: 105, unit: 'mm' } }
 */
export function phrase(text: string, quantities: Readonly<Record<string, Quantity>> = {}): Phrase {
  return { text, quantities };
}

/**
 * A phrase cut at its placeholders, in order: plain text, or the quantity that stands there.
 *
 * @param said the phrase
 * @returns its pieces; a name that has no quantity stays as it stands
 * @example phrasePieces(phrase('Rip to {width}.', { width: mm(105) }))
 *   // => ['Rip to ', { value: 105, unit: 'mm' }, '.']
 */
export function phrasePieces(said: Phrase): (string | Quantity)[] {
  return said.text
    .split(/\{(\w+)\}/)
    .map((piece, index) => {
      if (index % 2 === 0) return piece;
      const known = Object.hasOwn(said.quantities, piece) ? said.quantities[piece] : undefined;
      return known ?? `{${piece}}`;
    })
    .filter((piece) => piece !== '');
}
