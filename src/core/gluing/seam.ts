import { badNumber } from '../answer/bad-number.ts';
import { type Problem, problem } from '../answer/problem.ts';

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
export const seamsArea = (seams: readonly Seam[]): number => seams.reduce((sum, seam) => sum + seamArea(seam), 0);

const names: Readonly<Record<keyof Seam, string>> = {
  length: 'The length of a seam',
  width: 'The thickness at a seam',
};

/**
 * Why a seam can't have this length or width, mm.
 *
 * @param size which one
 * @param value mm
 * @param field of the problem, when it is another
 * @returns the problem, or undefined when the size can be
 * @valid seams of furniture
 * @example badSeamSize('length', 0) // => { field: 'length' }
 * @source the limits are common practice
 */
export const badSeamSize = (size: keyof Seam, value: number, field: string = size): Problem | undefined =>
  badNumber(field, names[size], value, 'mm', limits);

/** Why these seams can't be glued: there are none, or one lacks a size. */
export const badSeams = (seams: readonly Seam[]): Problem | undefined =>
  seams.length === 0
    ? problem('seams', 'Add a seam.')
    : seams
        .flatMap(({ length, width }, at) => [
          badSeamSize('length', length, `seams.${at}.length`),
          badSeamSize('width', width, `seams.${at}.width`),
        ])
        .find((bad) => bad !== undefined);
