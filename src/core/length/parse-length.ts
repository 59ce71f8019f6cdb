import { isProblem, type Outcome, problem } from '../answer/problem.ts';
import { type LengthUnit, tenthsOfMm } from './length-unit-sizes.ts';
import { plainLengthText } from './plain-length-text.ts';
import { type Ratio, readDecimal, readFraction } from './read-number.ts';

interface Term {
  readonly number: Ratio;
  readonly unit: LengthUnit | undefined;
}

/** Every way of writing each unit, in lower case and without a full stop. */
const unitNames = Object.entries({
  mm: /^(mm|millimet(re|er)s?)$/,
  cm: /^(cm|centimet(re|er)s?)$/,
  m: /^(m|met(re|er)s?)$/,
  in: /^(in|inch(es)?|")$/,
  ft: /^(ft|foot|feet|')$/,
}) as [LengthUnit, RegExp][];
const metric: readonly (LengthUnit | undefined)[] = ['m', 'cm', 'mm'];
const number = String.raw`(?:(?<whole>\d+)(?: | ?- ?))?(?<above>\d+) ?/ ?(?<below>\d+)|(?<decimal>[\d.,]+)`;
const termPattern = new RegExp(String.raw`(?:${number}) ?(?:(?<name>[a-z]+|['"])\.?)?(?: ?- ?(?=\d)| )?`, 'y');

/**
 * Reads a length as a maker writes it: `5 3/4`, `5-3/4"`, `5¾`, `3' 2 1/2"`, `3 ft 2 1/2 in`, `146 mm`, `14.6 cm`,
 * `1.2 m`, `5,75`.
 *
 * @param text what was typed
 * @param unit what a number without a unit means; a unit in the text wins, and a bare number after feet is inches
 * @returns millimetres, rounded once; 0 is a length here, limits are checked where the length is used
 * @valid any length of up to twelve digits
 * @errors (field ''): empty, not a length, negative, 0 below the line, fractions of 1 and more (55/8), a comma that may
 *   part thousands, units that don't belong together
 * @example parseLength('5 3/4', 'in') // => 146.05
 * @source 1 in = 25.4 mm and 1 ft = 304.8 mm exactly, NIST SP 811 appendix B
 */
export function parseLength(text: string, unit: 'in' | 'mm'): Outcome<number> {
  const plain = plainLengthText(text);
  if (plain === '') return problem('', 'Type a length, for example 5 3/4 or 146 mm.');
  if (/^- ?[\d.,]/.test(plain)) return problem('', 'A length can’t be negative.');
  const terms = readTerms(plain);
  if (isProblem(terms)) return terms;
  return addTerms(terms, unit);
}

function readTerms(plain: string): Outcome<Term[]> {
  const terms: Term[] = [];
  let at = 0;
  while (at < plain.length) {
    termPattern.lastIndex = at;
    const found = termPattern.exec(plain);
    if (!found) return notALength(plain);
    at = termPattern.lastIndex;
    const { whole = '', above, below = '', decimal = '', name } = found.groups ?? {};
    const [unit] = unitNames.find(([, written]) => name !== undefined && written.test(name)) ?? [];
    if (name !== undefined && unit === undefined) return notALength(plain);
    const ratio = above === undefined ? readDecimal(decimal) : readFraction(whole, above, below);
    if (isProblem(ratio)) return ratio;
    terms.push({ number: ratio, unit });
  }
  return terms;
}

/** Adds feet and inches, or metres and their parts: larger unit first, whole, and each part less than one of the unit before it. */
function addTerms(terms: readonly Term[], bareUnit: LengthUnit): Outcome<number> {
  let tenths: Ratio = { numerator: 0, denominator: 1 };
  let before: LengthUnit | undefined;
  for (const [index, { number: ratio, unit: written }] of terms.entries()) {
    const unit = written ?? (before === 'ft' ? 'in' : bareUnit);
    if (index > 0) {
      if (before === undefined || (written === undefined && before !== 'ft'))
        return problem('', 'There are two numbers. Write one length, for example 5 3/4 or 3 ft 2 in.');
      if (metric.includes(before) !== metric.includes(unit))
        return problem('', `${before} and ${unit} don’t belong in one length. Use one of them.`);
      if (tenthsOfMm[unit] >= tenthsOfMm[before])
        return problem('', 'Write the larger unit first, and each unit once, for example 3 ft 2 in.');
      if (tenths.denominator > 1 || (ratio.numerator / ratio.denominator) * tenthsOfMm[unit] >= tenthsOfMm[before])
        return problem(
          '',
          `Write whole ${before}, and after them less than ${tenthsOfMm[before] / tenthsOfMm[unit]} ${unit}.`,
        );
    }
    tenths = {
      numerator: tenths.numerator * ratio.denominator + ratio.numerator * tenthsOfMm[unit],
      denominator: ratio.denominator,
    };
    before = written;
  }
  return tenths.numerator / (tenths.denominator * 10);
}

function notALength(plain: string) {
  const shown = plain.length > 24 ? `${plain.slice(0, 24)}…` : plain;
  return problem('', `“${shown}” is not a length. Write it like 5 3/4, 3' 2 1/2" or 146 mm.`);
}
