import { mmPerInch } from '../length/length-unit-sizes.ts';
import type { Thickness } from './board.ts';

const mmPerQuarter = mmPerInch / 4;

/** A board measured this little under its name still has it: what a tape read to whole millimetres hides. */
const readingError = 0.5;

/**
 * The name in quarters that a measured rough board deserves: the whole quarters it is full of; below 3/4 in, half
 * quarters.
 *
 * @param mm measured thickness
 * @returns quarters of an inch
 * @valid rough, unsurfaced boards. A board half a millimetre short still counts as full
 * @example quartersFromMm(27.4) // => 4
 * @source common practice; 1 in = 25.4 mm exactly, NIST SP 811
 */
export function quartersFromMm(mm: number): number {
  const quarters = (mm + readingError) / mmPerQuarter;
  return quarters < 3 ? Math.floor(quarters * 2) / 2 : Math.floor(quarters);
}

/**
 * A board's thickness in mm, measured or by its name.
 *
 * @param thickness in quarters or mm
 * @returns mm
 * @valid rough boards
 * @example roughThickness({ quarters: 8 }) // => 50.8
 * @source 1 in = 25.4 mm exactly, NIST SP 811
 */
export function roughThickness(thickness: Thickness): number {
  return 'mm' in thickness ? thickness.mm : thickness.quarters * mmPerQuarter;
}

/**
 * A board's name in quarters, given or from what was measured.
 *
 * @param thickness in quarters or mm
 * @returns quarters of an inch
 * @valid as `quartersFromMm`
 * @example nominalQuarters({ mm: 27.4 }) // => 4
 * @source common practice
 */
export function nominalQuarters(thickness: Thickness): number {
  return 'mm' in thickness ? quartersFromMm(thickness.mm) : thickness.quarters;
}

/**
 * Thickness in inches that counts in board feet: below 1 in counts as 1 in (NHLA).
 *
 * @param thickness in quarters or mm
 * @returns inches
 * @valid rough hardwood
 * @example countedInches({ quarters: 3 }) // => 1
 * @source NHLA
 */
export function countedInches(thickness: Thickness): number {
  return Math.max(1, nominalQuarters(thickness) / 4);
}
