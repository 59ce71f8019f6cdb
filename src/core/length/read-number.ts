import { type Outcome, problem } from '../answer/problem.ts';

/** A number kept as a fraction of whole numbers, so that 5 3/4 and 5.75 both reach millimetres with one rounding. */
export interface Ratio {
  readonly numerator: number;
  readonly denominator: number;
}

/** Twelve digits are more than any length needs, and few enough that millimetres and inches stay exact. */
const mostDigits = 12;

/** Reads `3/4` or `5 3/4`, given in its parts. Refuses 0 below the line, and fractions of 1 and more: 55/8 is likely a lost space. */
export function readFraction(whole: string, above: string, below: string): Outcome<Ratio> {
  if ([whole, above, below].some((digits) => digits.length > mostDigits)) return tooLong();
  const numerator = Number(above);
  const denominator = Number(below);
  if (denominator === 0) return problem('', 'A fraction can’t have 0 below the line.');
  if (numerator >= denominator)
    return problem('', `${above}/${below} is not less than 1. Write the whole number first, like 5 3/4.`);
  return { numerator: Number(whole) * denominator + numerator, denominator };
}

/**
 * Reads `146`, `14.6`, `.5` or `5,75`. A comma that may part thousands is refused rather than guessed.
 *
 * @param text digits, points and commas only
 * @returns the number as a fraction of whole numbers
 * @valid up to twelve digits
 * @errors (field ''): no digits, more than one point, a comma that may part thousands, too many digits
 * @example readDecimal('5,75') // => { numerator: 575, denominator: 100 }
 * @source positional notation, with either decimal sign
 */
export function readDecimal(text: string): Outcome<Ratio> {
  const marks = text.replace(/\d/g, '');
  if (marks === text) return problem('', 'There is a point or comma without a number.');
  const [whole = '', decimals = ''] = text.split(/[.,]/);
  if (marks.length > 1 || (marks === ',' && decimals.length === 3 && Number(whole) > 0))
    return problem('', `${text} can be read in two ways. Write one point at most, and nothing between thousands.`);
  if (whole.length + decimals.length > mostDigits) return tooLong();
  return { numerator: Number(whole + decimals), denominator: 10 ** decimals.length };
}

function tooLong() {
  return problem('', 'That number has too many digits.');
}
