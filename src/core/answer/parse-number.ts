import { readDecimal } from '../length/read-number.ts';
import { isProblem, type Outcome, problem } from './problem.ts';

/**
 * Reads a plain number as a maker types it: a comma is taken for a point.
 *
 * @param text what was typed
 * @returns the number
 * @valid up to twelve digits
 * @errors (field ''): empty, not a number, negative, a comma that may part thousands
 * @example parseNumber('5,5') // => 5.5
 */
export function parseNumber(text: string): Outcome<number> {
  const plain = text.trim();
  if (plain === '') return problem('', 'Type a number.');
  if (/^[-−]/.test(plain)) return problem('', 'The number can’t be negative.');
  if (!/^[\d.,]+$/.test(plain)) return problem('', `“${plain.slice(0, 20)}” is not a number.`);
  const ratio = readDecimal(plain);
  return isProblem(ratio) ? ratio : ratio.numerator / ratio.denominator;
}
