import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { degrees, factor, mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { badLength } from './check-readings.ts';

/** What a test says of a try square: its own error, to be kept with the tool. */
export interface TrySquareError {
  /** The angle inside stock and blade, degrees. */
  readonly inside: number;
  /** How far it leads a line astray, mm for each metre; positive when the inside is over 90 degrees. */
  readonly perMetre: number;
}

/**
 * A try square's own error from striking a line, flipping the square over and striking again from the same
 * point. The two lines part by twice the error.
 *
 * @param gap mm, between the lines at their far ends, positive when the line struck with the stock to the left ends to
 *   the right of the other
 * @param length mm, from the edge to where the gap is measured
 * @returns the angle in degrees and the error in mm per m: half the gap over the length
 * @valid a straight edge to set the stock against; a gap up to a fifth of the length
 * @errors `length` when it is no length; `gap` when it is larger than that
 * @example trySquareTest(0.4, 200).value // => { perMetre: 1.0, inside: 90.057 }
 * @source plane geometry; the test is common practice
 */
export function trySquareTest(gap: number, length: number): Outcome<Worked<TrySquareError>> {
  const bad =
    badLength('length', 'The length of the line', length) ??
    badNumber('gap', 'The gap', gap, 'mm', { least: -length / 5, most: length / 5 });
  if (bad) return bad;
  const slope = gap / 2 / length;
  const inside = 90 + (Math.atan(slope) * 180) / Math.PI;
  return {
    value: { inside, perMetre: slope * 1000 },
    working: {
      steps: [
        workingStep('error at that length', phrase`${mm(gap)} / 2: the flip doubles it`, mm(gap / 2)),
        workingStep(
          'thousandths of a length',
          phrase`${mm(gap / 2)} / ${mm(length)} x ${factor(1000)}`,
          factor(slope * 1000),
        ),
        workingStep('angle inside', phrase`${degrees(90)} and the slope of the error`, degrees(inside)),
      ],
      holds: phrase`Test first that the edge is straight.`,
      sources: ['geometry', 'common-practice'],
    },
  };
}
