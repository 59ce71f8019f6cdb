import { mmPerInch } from './length-unit-sizes.ts';
import type { LengthUnits } from './length-units.ts';
import { type SplitLength, splitLength } from './split-length.ts';

/** What a tape shows at best. What is nearly that counts as it; less is for a gauge, and gauges have thousandths. */
const finest = 64;
const nearly = 0.75;

/**
 * Cuts a length for showing as `splitLength` does, but what is less than the finest step keeps its size: a gap of 0.4 mm
 * is not nothing to a maker who reads in sixteenths, and a cut that is 1/32 off doesn't move by 1/16. What a tape could
 * show stands as a fraction; less than that is a decimal, as a caliper or a feeler gauge reads it.
 *
 * @param mm length in millimetres; may be negative
 * @param units inches with a finest fraction, or millimetres
 * @returns as `splitLength`; less than the finest fraction in sixty-fourths of an inch, and below one of those in
 *   thousandths; less than 0.1 mm in hundredths
 * @valid any finite length
 * @example shownLength(0.45, { unit: 'in', nearest: 16 }) // => { whole: '', numerator: 1, denominator: 64 }
 * @example shownLength(0.2, { unit: 'in', nearest: 16 }) // => { whole: '0.008', numerator: 0 }
 * @source 1 in = 25.4 mm exactly, NIST SP 811 appendix B
 */
export function shownLength(mm: number, units: LengthUnits): SplitLength {
  const split = splitLength(mm, units);
  const size = Math.abs(mm);
  const inches = units.unit === 'in';
  if (size >= (inches ? mmPerInch / units.nearest : 0.1)) return split;
  if (inches && size >= (nearly * mmPerInch) / finest) return splitLength(mm, { ...units, nearest: finest });
  const small = Number(inches ? (size / mmPerInch).toFixed(3) : size.toFixed(2));
  return { ...split, negative: mm < 0 && small > 0, whole: String(small), numerator: 0 };
}
