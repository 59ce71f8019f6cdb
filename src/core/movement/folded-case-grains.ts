import { type Outcome, problem } from '../answer/problem.ts';
import type { GrainAtSeam } from './joint-side.ts';

/** One of the four sides of a mitred case, mm. */
export interface CaseSide {
  /** Along the grain. */
  readonly length: number;
  readonly width: number;
}

/** Tapes differ: sizes this near to one another are meant to be the same, mm. */
const same = (a: number, b: number): boolean => Math.abs(a - b) <= 1;

/**
 * How the grain of the four sides of a mitred case runs at its corners, from their sizes: the one size that all four
 * share is its depth. A side that is as wide as the case is deep has its grain running on around, across the mitres; one
 * that is as long as that has it running front to back.
 *
 * @param sides four, in order around the case: length along the grain and width, mm
 * @returns the grain of each side at both of its mitres
 * @valid a case as deep all around. Where length and width of a side are alike, its grain is taken to run on around
 * @errors a `Problem` on `sides` when they share no size
 * @example foldedCaseGrains([
 *   { length: 800, width: 300 },
 *   { length: 400, width: 300 },
 *   { length: 300, width: 800 },
 *   { length: 400, width: 300 },
 * ]) // => ['across', 'across', 'along', 'across']
 * @source geometry
 */
export function foldedCaseGrains(
  sides: readonly [CaseSide, CaseSide, CaseSide, CaseSide],
): Outcome<readonly GrainAtSeam[]> {
  const runningOn = (depth: number) => sides.filter(({ width }) => same(depth, width)).length;
  const [depth] = [sides[0].width, sides[0].length]
    .filter((size) => sides.every(({ width, length }) => same(size, width) || same(size, length)))
    .sort((a, b) => runningOn(b) - runningOn(a));
  if (depth === undefined)
    return problem('sides', 'They share no width or length, the depth of the case. Check the parts.');
  return sides.map(({ width }) => (same(depth, width) ? 'across' : 'along'));
}
