import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import { count, mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';

/** Fewer measured strips than this say nothing about a habit. */
const enoughStrips = 5;

/**
 * The maker's own allowance: what would have been enough for nine strips of ten.
 *
 * @param taken what each measured strip really lost, mm
 * @param by how that was found, in words
 * @returns mm, rounded up to a tenth; null with fewer than five strips, which say nothing about a habit
 * @valid strips milled in the same way
 * @example ownAllowance([3.1, 3.6, 3.5, 3.8, 5], 'rough less finished') // => { value: 5 }
 * @source the nearest-rank percentile; nine of ten is an assumption
 */
export function ownAllowance(taken: readonly number[], by: string): Worked | null {
  if (taken.length < enoughStrips) return null;
  const order = [...taken].sort((one, other) => one - other);
  const value = Math.ceil((order[Math.ceil(order.length * 0.9) - 1] as number) * 10 - 1e-6) / 10;
  return oneStep(
    'allowance',
    phrase`${by}: enough for nine of ten of ${count(taken.length)} measured strips`,
    mm(value),
    ['assumption'],
    phrase`From ${count(enoughStrips)} measured strips on.`,
  );
}
