import type { LengthUnits } from './length-units.ts';
import { type SplitLength, splitLength } from './split-length.ts';

/**
 * Writes a length in the maker's units, without the unit's sign.
 *
 * @param mm length in millimetres; may be negative
 * @param units inches with a finest fraction, or millimetres
 * @returns `5 3/4` in inches, reduced; `146.1` or `146` in millimetres; negative with a true minus sign
 * Valid for any finite length; feet are not made.
 *
 * Example: `formatLength(146.05, { unit: 'in', nearest: 16 })` is `5 3/4`.
 *
 * Source: 1 in = 25.4 mm exactly, NIST SP 811 appendix B.
 */
export function formatLength(mm: number, units: LengthUnits): string {
  return lengthText(splitLength(mm, units));
}

/** The parts of a length in one line. Example: the parts of 146.05 mm in sixteenths are `5 3/4`. */
export function lengthText({ negative, whole, numerator, denominator }: SplitLength): string {
  const fraction = numerator === 0 ? '' : `${numerator}/${denominator}`;
  return `${negative ? '−' : ''}${[whole, fraction].filter((part) => part !== '').join(' ')}`;
}
