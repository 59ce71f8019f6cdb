import type { Outcome } from '../answer/problem.ts';
import { badLength } from './check-readings.ts';

/** A right-angled triangle in whole numbers of a unit: `along` on the front edge, `across` on the end. */
export interface WholeTriangle {
  readonly ratio: readonly [along: number, across: number, diagonal: number];
  /** How many times the ratio, in units. */
  readonly times: number;
  readonly along: number;
  readonly across: number;
  readonly diagonal: number;
}

const greatestCommonDivisor = (a: number, b: number): number => (b === 0 ? a : greatestCommonDivisor(b, a % b));

/** Euclid's formula: m² - n², 2mn, m² + n² for m > n, no common divisor, not both odd. Up to m of 5, past which they grow thin. */
function ratios(): [number, number, number][] {
  const found: [number, number, number][] = [];
  for (let m = 2; m <= 5; m++)
    for (let n = 1; n < m; n++)
      if ((m - n) % 2 === 1 && greatestCommonDivisor(m, n) === 1)
        found.push([m * m - n * n, 2 * m * n, m * m + n * n], [2 * m * n, m * m - n * n, m * m + n * n]);
  return found;
}

/**
 * The whole-number triangles that fit a piece, each as large as fits: marks on the two edges at `along` and
 * `across` are square when the distance between them is `diagonal`.
 *
 * @param length mm
 * @param width mm
 * @param unit the step in which marks are set, mm (10 for a centimetre, 25.4 for an inch)
 * @returns mm, the largest triangle first: a longer one shows a smaller error
 * @valid pieces of at least 3 by 4 units; smaller ones give an empty list
 * @errors `length`, `width` or `unit` when it is no length
 * @example wholeNumberTriangles(1800, 800, 100)[0]
 *   // => { ratio: [15, 8, 17], times: 1, along: 1500, across: 800, diagonal: 1700 }
 * @source Euclid I.48 and X.29 (lemma), the formula for whole-number triangles
 */
export function wholeNumberTriangles(length: number, width: number, unit: number): Outcome<WholeTriangle[]> {
  const bad =
    badLength('length', 'The length', length) ??
    badLength('width', 'The width', width) ??
    badLength('unit', 'The step', unit);
  if (bad) return bad;
  return ratios()
    .map((ratio) => {
      // A hair of room, so that 914.4 mm holds 36 in.
      const times = Math.floor(Math.min(length / ratio[0], width / ratio[1]) / unit + 1e-9);
      const [along, across, diagonal] = ratio;
      return {
        ratio,
        times,
        along: along * times * unit,
        across: across * times * unit,
        diagonal: diagonal * times * unit,
      };
    })
    .filter(({ times }) => times > 0)
    .sort((one, other) => other.diagonal - one.diagonal || other.along - one.along);
}
