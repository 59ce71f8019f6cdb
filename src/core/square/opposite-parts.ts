import { badNumber, firstBad } from '../answer/bad-number.ts';
import { type Phrase, phrase, sentences } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { longest } from './check-readings.ts';

const partNames = ['front', 'back', 'right', 'left'] as const;
export type PartName = (typeof partNames)[number];

export interface PartTrim {
  readonly part: PartName;
  /** To the length of the one opposite, mm. */
  readonly by: number;
}

/**
 * Which of a frame's parts to trim before its angles are looked at. With one opposite part longer, no set of
 * angles closes all four corners.
 *
 * @param lengths of the four parts at the long points, mm
 * @param precision the reading error of one measurement, mm
 * @returns the parts to trim and by how much, mm; none when both pairs are equal within twice the precision
 * @valid frames of four, opposite parts meant equal
 * @errors the part that is no length; `precision` below 0
 * @example oppositeParts({ front: 401.5, back: 400, right: 300, left: 300 }, 0.5).value
 *   // => { trims: [{ part: 'front', by: 1.5 }] }
 * @source plane geometry; common practice
 */
export function oppositeParts(
  lengths: Readonly<Record<PartName, number>>,
  precision: number,
): Outcome<Worked<{ readonly trims: readonly PartTrim[]; readonly say: Phrase }>> {
  const bad =
    firstBad(partNames.map((part) => [part, `The ${part} part`, lengths[part], 'mm', { above: 0, most: longest }])) ??
    badNumber('precision', 'The precision', precision, 'mm', { least: 0 });
  if (bad) return bad;
  const pairs = (
    [
      ['front', 'back'],
      ['right', 'left'],
    ] as const
  ).map(([one, other]) => ({
    one,
    other,
    by: lengths[one] - lengths[other],
  }));
  const trims = pairs
    .filter(({ by }) => Math.abs(by) > 2 * precision + 1e-9)
    .map(({ one, other, by }): PartTrim => ({ part: by > 0 ? one : other, by: Math.abs(by) }));
  return {
    value: {
      trims,
      say:
        trims.length === 0
          ? phrase`Opposite parts are equal.`
          : sentences(trims.map(({ part, by }) => phrase`Trim the ${part} part by ${mm(by)}.`)),
    },
    working: {
      steps: pairs.map(({ one, other, by }) =>
        workingStep(
          `${one} and ${other} differ by`,
          phrase`${mm(lengths[one])} and ${mm(lengths[other])}, read to ${mm(precision)} each`,
          mm(Math.abs(by)),
        ),
      ),
      sources: ['geometry', 'common-practice'],
    },
  };
}
