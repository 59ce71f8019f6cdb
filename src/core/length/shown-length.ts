import { mmPerInch } from './length-unit-sizes.ts';
import type { LengthUnits } from './length-units.ts';
import { type SplitLength, splitLength } from './split-length.ts';

/**
 * Cuts a length for showing as `splitLength` does, but writes one that would vanish as a decimal: an error or a gap of
 * 0.4 mm is not nothing to a maker who reads in sixteenths.
 *
 * @param mm length in millimetres; may be negative
 * @param units inches with a finest fraction, or millimetres
 * @returns as `splitLength`; below half the finest fraction, thousandths of an inch or hundredths of a millimetre
 * @valid any finite length
 * @example shownLength(0.45, { unit: 'in', nearest: 16 }) // => { whole: '0.018', numerator: 0 }
 * @source 1 in = 25.4 mm exactly, NIST SP 811 appendix B
 */
export function shownLength(mm: number, units: LengthUnits): SplitLength {
  const split = splitLength(mm, units);
  if (split.numerator !== 0 || Number(split.whole) !== 0) return split;
  const small = units.unit === 'in' ? (Math.abs(mm) / mmPerInch).toFixed(3) : Math.abs(mm).toFixed(2);
  return Number(small) === 0 ? split : { ...split, negative: mm < 0, whole: small };
}
