import { formatLength, lengthText } from '../core/length/format-length.ts';
import { parseLength } from '../core/length/parse-length.ts';
import { shownLength } from '../core/length/shown-length.ts';
import { units } from './units.ts';

/** Reads what stands in an entry for a length. */
export const readLength = (text: string) => parseLength(text, units.value.unit);

/** What stands in an entry for a length, mm, that is known already. */
export function writeLength(mm: number): string {
  // What was typed finer than the maker reads stands as it was typed: a kerf of 3/32 is not 1/8.
  const fine = formatLength(mm, { ...units.value, nearest: 64 });
  return readLength(fine) === mm ? fine : lengthText(shownLength(mm, units.value));
}
