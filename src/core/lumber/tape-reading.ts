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
 * Example: 158.75 mm and 158.8 mm are both 6.25 in; 165 mm stays 6.496 in.
 */
export function widthInInches(mm: number): number {
  const nearest = Math.round((mm * 64) / mmPerInch) / 64;
  return Math.abs(nearest * mmPerInch - mm) <= widthError + noise ? nearest : mm / mmPerInch;
}

/**
 * Whole feet in a length; one that was rounded to whole millimetres loses no foot by it.
 *
 * Example: 2438 mm are 8 ft, 2437 mm are 7 ft.
 */
export function wholeFeet(mm: number): number {
  return Math.floor((mm + lengthError + noise) / mmPerFoot);
}
