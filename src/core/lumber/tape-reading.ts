import { mmPerFoot, mmPerInch } from '../length/length-unit-sizes.ts';

/** Widths are kept in tenths of a millimetre at the coarsest, so half of one can be lost. */
const widthError = 0.05;
/** Lengths may have been read to whole millimetres, so half of one can be lost: 2438 mm are 8 ft. */
const lengthError = 0.5;
/** The noise of binary numbers, mm. */
const noise = 1e-6;

/**
 * A width in inches; one that was rounded to tenths of a millimetre gets its 1/64 in back.
 *
 * @param mm width
 * @returns inches
 * @valid tapes read to 1/64 in or to a millimetre
 * @example [158.75, 158.8, 165].map(widthInInches) // => [6.25, 6.25, 6.496]
 * @source 1 in = 25.4 mm exactly, NIST SP 811
 */
export function widthInInches(mm: number): number {
  const nearest = Math.round((mm * 64) / mmPerInch) / 64;
  return Math.abs(nearest * mmPerInch - mm) <= widthError + noise ? nearest : mm / mmPerInch;
}

/**
 * Whole feet in a length; one that was rounded to whole millimetres loses no foot by it.
 *
 * @param mm length
 * @returns whole feet
 * @valid tapes read to a millimetre or finer
 * @example [2438, 2437].map(wholeFeet) // => [8, 7]
 * @source 1 ft = 304.8 mm exactly, NIST SP 811
 */
export function wholeFeet(mm: number): number {
  return Math.floor((mm + lengthError + noise) / mmPerFoot);
}
