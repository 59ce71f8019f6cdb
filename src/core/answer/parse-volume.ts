import { parseNumber } from './parse-number.ts';
import { isProblem, type Outcome, problem } from './problem.ts';
import * as us from './us-units.ts';

const litresIn: Readonly<Record<string, number>> = {
  ml: 0.001,
  cl: 0.01,
  l: 1,
  floz: us.litresPerFluidOunce,
  oz: us.litresPerFluidOunce,
  pt: us.litresPerQuart / 2,
  pint: us.litresPerQuart / 2,
  qt: us.litresPerQuart,
  quart: us.litresPerQuart,
  gal: us.litresPerGallon,
  gallon: us.litresPerGallon,
  litre: 1,
  liter: 1,
};

/** A number, or a fraction below 1 with or without whole numbers before it, then the unit. */
const pattern = /^(?:(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)|([\d.,]+)) ?([a-z. ]*)$/;

/**
 * Reads how much a container holds: `750 ml`, `2,5 l`, `1/2 pt`, `1 qt`, `0.25 gal`.
 *
 * @param text what was typed
 * @param bare what a number without a unit means: US measures for makers who read inches
 * @returns litres; US customary measures, not imperial ones
 * @valid any volume of up to twelve digits; 0 is a volume here, limits are checked where it is used
 * @errors (field ''): empty, not a volume, a unit that is none
 * @example parseVolume('750 ml', 'qt') // => 0.75
 * @source 1 US gallon = 3.785 411 784 L exactly, NIST SP 811 appendix B
 */
export function parseVolume(text: string, bare: 'qt' | 'l' | 'floz' | 'ml'): Outcome<number> {
  const plain = text.trim().toLowerCase();
  if (plain === '') return problem('', 'Type how much it holds, for example 750 ml or 1 qt.');
  const [, whole = '0', above, below, decimal = '', name = ''] = pattern.exec(plain) ?? [];
  const unit = name.replace(/[. ]/g, '').replace(/s$/, '');
  const known = unit === '' ? bare : unit;
  const size = Object.hasOwn(litresIn, known) ? litresIn[known] : undefined;
  if (size === undefined) return problem('', `“${name.trim()}” is not a unit here. Use ml, l, fl oz, pt, qt or gal.`);
  if (above !== undefined) {
    if (Number(below) === 0) return problem('', 'A fraction can’t have 0 below the line.');
    return (Number(whole) + Number(above) / Number(below)) * size;
  }
  const number = parseNumber(decimal === '' ? plain : decimal);
  return isProblem(number) ? number : number * size;
}
