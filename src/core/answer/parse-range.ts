import { parseNumber } from './parse-number.ts';
import { isProblem, type Outcome, problem } from './problem.ts';
import { type Range, range } from './range.ts';

/**
 * Reads one number, or two with a dash or `to` between them, as labels give them.
 *
 * @param text what was typed
 * @returns the range; one number is a range of one value
 * @valid numbers that `parseNumber` reads
 * @errors (field ''): not a number, the two the wrong way round
 * @example ['10–12', '9,5'].map(parseRange) // => [{ least: 10, most: 12 }, { least: 9.5, most: 9.5 }]
 */
export function parseRange(text: string): Outcome<Range> {
  const [first = '', second, ...more] = text.trim().split(/\s*(?:[-–—]|\bto\b)\s*/);
  if (more.length > 0) return problem('', 'Type one number, or two with a dash between them.');
  const least = parseNumber(first);
  if (isProblem(least) || second === undefined) return isProblem(least) ? least : range(least);
  const most = parseNumber(second);
  if (isProblem(most)) return most;
  return least > most ? problem('', `${first} to ${second} is the wrong way round. Swap the two.`) : range(least, most);
}
