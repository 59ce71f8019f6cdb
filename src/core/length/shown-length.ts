import { mmPerInch } from './length-unit-sizes.ts';
import type { LengthUnits } from './length-units.ts';
import { type SplitLength, splitLength } from './split-length.ts';

/** What a tape shows at best. What is nearly that counts as it; less is for a gauge, and gauges have thousandths. */
const finest = 64;
const nearly = 0.75;

/**
 * Cuts a length for showing as `splitLength` does, but never lets one vanish: a gap of 0.4 mm is not nothing to a maker
 * who reads in sixteenths. What a tape could show stands as a fraction; less than that is a decimal, as a caliper or a
 * feeler gauge reads it.
 *
 * @param mm length in millimetres; may be negative
 * @param units inches with a finest fraction, or millimetres
 * @returns as `splitLength`; where that would round to nothing, sixty-fourths of an inch, and
 *   below one of those thousandths; or hundredths of a millimetre
 * @valid any finite length
 * @example shownLength(0.45, { unit: 'in', nearest: 16 }) // => { whole: '', numerator: 1, denominator: 64 }
 * @example shownLength(0.2, { unit: 'in', nearest: 16 }) // => { whole: '0.008', numerator: 0 }
 * @source 1 in = 25.4 mm exactly, NIST SP 811 appendix B
 */
export function shownLength(mm: number, units: LengthUnits): SplitLength {
  const split = splitLength(mm, units);
  if (split.numerator !== 0 || Number(split.whole) !== 0) return split;
  if (units.unit === 'in' && Math.abs(mm) >= (nearly * mmPerInch) / finest)
    return splitLength(mm, { ...units, nearest: finest });
  const small = units.unit === 'in' ? (Math.abs(mm) / mmPerInch).toFixed(3) : Math.abs(mm).toFixed(2);
  return Number(small) === 0 ? split : { ...split, negative: mm < 0, whole: small };
}
