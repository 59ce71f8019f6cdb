import { type Phrase, phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import type { PartSizes } from './check-part.ts';

/** Thinner than this, glued-up wood is hard to keep flat and to plane. */
const thinPanel = 6;

/**
 * What may be a slip in a part's sizes although they can be: said to the maker, never refused.
 *
 * @param part sizes in mm, and whether it is glued up from strips
 * @returns a sentence for each doubt: thicker than wide, wider than long, or a glued-up panel below 6 mm
 * @valid sizes within `partLimits`
 * @example doubtfulPart({ length: 600, width: 300, thickness: 3, quantity: 1, panel: true }).length // => 1
 * @source common practice
 */
export function doubtfulPart(part: Omit<PartSizes, 'name'> & { readonly panel: boolean }): Phrase[] {
  const { length, width, thickness, panel } = part;
  return [
    thickness > width ? phrase`Thicker (${mm(thickness)}) than wide (${mm(width)}). Are the two swapped?` : undefined,
    width > length ? phrase`Wider (${mm(width)}) than long (${mm(length)}). Length runs along the grain.` : undefined,
    panel && thickness < thinPanel
      ? phrase`A panel ${mm(thickness)} thick is hard to plane and keep flat. Resaw thicker, or use a solid part.`
      : undefined,
  ].filter((doubt) => doubt !== undefined);
}
