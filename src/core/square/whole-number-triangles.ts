import type { Outcome } from '../answer/problem.ts';
import { badLength } from './check-readings.ts';

/** A right-angled triangle in whole numbers of a unit: `along` on the front edge, `across` on the end; mm. */
export interface WholeTriangle {
  readonly along: number;
  readonly across: number;
  readonly diagonal: number;
}

/** Euclid's formula: m² - n², 2mn, m² + n² for m > n, not both odd. Up to m of 5, past which they grow thin; so far no two share a divisor. */
function ratios(): (readonly [number, number, number])[] {
  const found: (readonly [number, number, number])[] = [];
  for (let m = 2; m <= 5; m++)
    for (let n = m - 1; n > 0; n -= 2) {
      const [odd, even, diagonal] = [m * m - n * n, 2 * m * n, m * m + n * n];
      found.push([odd, even, diagonal], [even, odd, diagonal]);
    }
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
 *   // => { along: 1500, across: 800, diagonal: 1700 }
 * @source Euclid I.48 and X.29 (lemma), the formula for whole-number triangles
 */
export function wholeNumberTriangles(length: number, width: number, unit: number): Outcome<WholeTriangle[]> {
  const bad =
    badLength('length', 'The length', length) ??
    badLength('width', 'The width', width) ??
    badLength('unit', 'The step', unit);
  if (bad) return bad;
  return ratios()
    .map(([along, across, diagonal]) => {
      // A hair of room, so that 914.4 mm holds 36 in.
      const times = unit * Math.floor(Math.min(length / along, width / across) / unit + 1e-9);
      return { along: along * times, across: across * times, diagonal: diagonal * times };
    })
    .filter(({ diagonal }) => diagonal > 0)
    .sort((one, other) => other.diagonal - one.diagonal || other.along - one.along);
}
