import { badNumber } from '../answer/bad-number.ts';
import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { m2, money } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';

/**
 * What a finish costs on each square metre.
 *
 * @param cost of all containers bought, in the maker's money
 * @param areaM2 m2 that get finish
 * @returns money per m2
 * @valid all that was bought counts, also what is left over
 * @errors no area, a negative cost
 * @example costPerM2(48, 3.2) // => { value: 15.0 }
 * @source arithmetic
 */
export function costPerM2(cost: number, areaM2: number): Outcome<Worked> {
  const bad =
    badNumber('cost', 'The cost', cost, 'money', { least: 0, most: 1e8 }) ??
    badNumber('areaM2', 'The area', areaM2, 'm2', { above: 0, most: 1000 });
  if (bad) return bad;
  const by = phrase`${money(cost)} over ${m2(areaM2)}.`;
  return oneStep('cost per square metre', by, money(cost / areaM2), ['label']);
}
