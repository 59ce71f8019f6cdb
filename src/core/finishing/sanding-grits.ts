import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { count } from '../answer/quantity.ts';

/** One grit may follow another up to this many times as fine: beyond it the old scratches stay. Common practice. */
export const mostJump = 1.6;

/**
 * The fewest grits from coarse to fine with no jump too large.
 *
 * @param from P number to begin with
 * @param to P number to end with
 * @param owned P numbers on the shelf, in any order; both ends are taken as there
 * @returns P numbers in order, both ends included
 * @valid P 24 to P 3000; a jump of at most 1.6 times
 * @errors the ends the wrong way round or not P numbers; a gap on the shelf, with the grits on either side
 * @example sandingGrits(80, 220, [100, 120, 150, 180]) // => [80, 120, 180, 220]
 * @source common practice; always taking the furthest allowed grit gives the fewest
 */
export function sandingGrits(from: number, to: number, owned: readonly number[]): Outcome<readonly number[]> {
  const limits = { least: 24, whole: true };
  const bad =
    badNumber('to', 'The last grit', to, 'count', { ...limits, most: 3000 }) ??
    badNumber('from', 'The first grit', from, 'count', { ...limits, most: to });
  if (bad) return bad;
  const shelf = [...owned.filter((grit) => grit < to), to];
  const order = [from];
  let last = from;
  while (last < to) {
    const next = Math.max(...shelf.filter((grit) => grit > last && grit <= last * mostJump), last);
    if (next === last) return problem('owned', phrase`No grit on your shelf is near enough to ${count(last)}.`);
    order.push(next);
    last = next;
  }
  return order;
}
