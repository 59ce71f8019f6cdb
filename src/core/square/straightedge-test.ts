import { badNumber } from '../answer/bad-number.ts';
import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { badLength } from './check-readings.ts';

/**
 * A straightedge's own error from striking a line along it between two points, flipping it over to the far
 * side of the line and striking again through the same points.
 *
 * @param gap mm, the widest between the two lines, positive when the line struck first, with the straightedge towards
 *   you, lies further from you (a crowned edge), negative when it lies nearer (hollow)
 * @param length mm, between the points
 * @returns mm, half the gap: crowned positive, hollow negative
 * @valid a bow in one sweep; a gap up to a hundredth of the length
 * @errors `length` when it is no length; `gap` when it is larger than that
 * @example straightedgeTest(0.6, 1200) // => { value: 0.3 }
 * @source plane geometry; the test is common practice
 */
export function straightedgeTest(gap: number, length: number): Outcome<Worked> {
  const bad =
    badLength('length', 'The length of the line', length) ??
    badNumber('gap', 'The gap', gap, 'mm', { least: -length / 100, most: length / 100 });
  if (bad) return bad;
  return oneStep('error of the edge', phrase`${mm(gap)} / 2: the flip doubles it`, mm(gap / 2), [
    'geometry',
    'common-practice',
  ]);
}
