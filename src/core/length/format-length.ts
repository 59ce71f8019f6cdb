import type { LengthUnits } from './length-units.ts';
import { type SplitLength, splitLength } from './split-length.ts';

/**
 * Writes a length in the maker's units, without the unit's sign.
 *
 * @param mm length in millimetres; may be negative
 * @param units inches with a finest fraction, or millimetres
 * @returns `5 3/4` in inches, reduced; `146.1` or `146` in millimetres; negative with a true minus sign
 * @valid any finite length; feet are not made
 * @example formatLength(146.05, { unit: 'in', nearest: 16 }) // => '5 3/4'
 * @source 1 in = 25.4 mm exactly, NIST SP 811 appendix B
 */
export function formatLength(mm: number, units: LengthUnits): string {
  return lengthText(splitLength(mm, units));
}

/**
 * The parts of a length in one line.
 *
 * @param split a length cut by `splitLength` or `shownLength`
 * @returns text without the unit
 * @valid any length
 * @example lengthText(splitLength(146.05, { unit: 'in', nearest: 16 })) // => '5 3/4'
 * @source typographic convention
 */
export function lengthText({ negative, whole, numerator, denominator }: SplitLength): string {
  const fraction = numerator === 0 ? '' : `${numerator}/${denominator}`;
  return `${negative ? '−' : ''}${[whole, fraction].filter((part) => part !== '').join(' ')}`;
}
