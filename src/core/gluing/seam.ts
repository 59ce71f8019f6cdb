import { firstBad, type NumberCheck } from '../answer/bad-number.ts';
import { type Problem, problem } from '../answer/problem.ts';
import { sumOf } from '../answer/sum-of.ts';

/** A glued joint, flat and rectangular: an edge joint is the panel's length by its thickness. */
export interface Seam {
  /** mm */
  readonly length: number;
  /** mm */
  readonly width: number;
}

/** Longest seam taken as meant, mm: 12 m. */
const limits = { above: 0, most: 12000 };

/** Area of one seam, m2. */
export const seamArea = ({ length, width }: Seam): number => (length * width) / 1e6;

/** Area of all seams together, m2. */
export const seamsArea = (seams: readonly Seam[]): number => sumOf(seams, (seam) => seamArea(seam));

/**
 * Why these seams can't be glued: there are none, or one lacks a size.
 *
 * @param seams sizes in mm
 * @returns the problem, or undefined when they can be
 * @valid seams of furniture
 * @example badSeams([{ length: 0, width: 20 }]) // => { field: 'seams.0.length' }
 * @source the limits are common practice
 */
export const badSeams = (seams: readonly Seam[]): Problem | undefined =>
  seams.length === 0
    ? problem('seams', 'Add a seam.')
    : firstBad(
        seams.flatMap(({ length, width }, at): NumberCheck[] => [
          [`seams.${at}.length`, 'The length of a seam', length, 'mm', limits],
          [`seams.${at}.width`, 'The thickness at a seam', width, 'mm', limits],
        ]),
      );
