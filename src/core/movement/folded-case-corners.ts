import { type Outcome, problem } from '../answer/problem.ts';
import type { GrainAtSeam } from './joint-side.ts';

/** One of the four sides of a mitred case, mm. */
export interface CaseSide {
  /** Along the grain. */
  readonly length: number;
  readonly width: number;
}

export interface CaseCorner {
  /** Which two sides meet, counted from 0. */
  readonly sides: readonly [number, number];
  /** How the grain of each runs at the mitre: across it where it runs on around the case. */
  readonly grain: readonly [GrainAtSeam, GrainAtSeam];
}

/** Tapes differ: sizes this near to one another are meant to be the same, mm. */
const same = (a: number, b: number): boolean => Math.abs(a - b) <= 1;

/**
 * The four corners of a mitred case from the sizes of its sides: the one size that all four share is its depth. A side
 * that is as wide as the case is deep has its grain running on around; one that is as long as that has it running front
 * to back.
 *
 * @param sides four, in order around the case: length along the grain and width, mm
 * @returns which sides meet at each of the corners 0 to 1, 1 to 2, 2 to 3 and 3 to 0, and how the grain of each runs
 *   there
 * @valid a case as deep all around. Where length and width of a side are alike, its grain is taken to run on around
 * @errors a `Problem` on `sides` when they share no size
 * @example foldedCaseCorners([
 *   { length: 800, width: 300 },
 *   { length: 400, width: 300 },
 *   { length: 300, width: 800 },
 *   { length: 400, width: 300 },
 * ])[1] // => { sides: [1, 2], grain: ['across', 'along'] }
 * @source geometry
 */
export function foldedCaseCorners(
  sides: readonly [CaseSide, CaseSide, CaseSide, CaseSide],
): Outcome<readonly CaseCorner[]> {
  const shared = sides
    .flatMap(({ width, length }) => [width, length])
    .filter((size) => sides.every(({ width, length }) => same(size, width) || same(size, length)));
  const runningOn = (depth: number) => sides.filter(({ width }) => same(depth, width)).length;
  const [depth] = shared.sort((a, b) => runningOn(b) - runningOn(a));
  if (depth === undefined)
    return problem('sides', 'They share no width or length, the depth of the case. Check the parts.');
  const grains = sides.map(({ width }): GrainAtSeam => (same(depth, width) ? 'across' : 'along'));
  return [0, 1, 2, 3].map((at) => {
    const next = (at + 1) % 4;
    return { sides: [at, next], grain: [grains[at] ?? 'across', grains[next] ?? 'across'] };
  });
}
