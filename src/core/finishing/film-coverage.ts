import { badNumber } from '../answer/bad-number.ts';
import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { percent, quantity } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';

/**
 * The spreading rate that leaves a film of a given thickness.
 *
 * @param solids share of the volume that stays when dry, percent
 * @param film thickness of the dry film of one coat, micrometres
 * @returns m2 per litre
 * @valid a film on a sealed, flat surface; nothing soaks in and nothing is lost
 * @errors solids outside 1 to 100 percent, a film outside 1 to 2000 micrometres
 * @example filmCoverage(50, 25) // => { value: 20 }
 * @source geometry: one litre spread 1 mm thick covers 1 m2
 */
export function filmCoverage(solids: number, film: number): Outcome<Worked> {
  const bad =
    badNumber('solids', 'The volume solids', solids, 'percent', { least: 1, most: 100 }) ??
    badNumber('film', 'The film', film, 'micrometres', { least: 1, most: 2000 });
  if (bad) return bad;
  return oneStep(
    'spreading rate',
    phrase`${percent(solids)} of a litre, spread ${quantity(film, 'micrometres')} thick.`,
    quantity((solids * 10) / film, 'm2PerLitre'),
    ['geometry'],
    phrase`Sealed, flat wood; nothing soaks in or is lost.`,
  );
}
