import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { factor, mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';

/**
 * - `within`: no further out than allowed, what the readings hide added
 * - `close`: no further out than allowed as read, further with what the readings hide
 * - `outside`: read as out by more than allowed, and by more than the readings hide
 * - `unseen`: the readings hide more than is allowed
 */
export type ToleranceVerdict = 'within' | 'close' | 'outside' | 'unseen';

export interface ToleranceResult {
  readonly verdict: ToleranceVerdict;
  /** The slide allowed at that end, mm. */
  readonly allowed: number;
}

/**
 * Whether an end is near enough to square for its use.
 *
 * @param slide mm (either sign)
 * @param end the length of that end, mm
 * @param perMetre slide allowed for a metre of end, mm
 * @param detectable the least slide that the readings show, mm, Infinity when none
 * @param toolPerMetre known error of the reference tool that was used, mm per m, 0 for a tape
 * @returns the verdict and the slide allowed in mm: the slide is judged as read, and what the readings may hide beside it
 * @valid near a rectangle; readings that are all off the worst way at once can hide twice the least slide that they show
 * @errors the field that is out of range
 * @example [0.1, 0.4].map((slide) => tolerance(slide, 800, 0.75, 0.5).value)
 *   // => [{ allowed: 0.6, verdict: 'within' }, { verdict: 'close' }]
 * @source common practice
 */
export function tolerance(
  slide: number,
  end: number,
  perMetre: number,
  detectable: number,
  toolPerMetre = 0,
): Outcome<Worked<ToleranceResult>> {
  const bad =
    badNumber('slide', 'The slide', slide, 'mm', {}) ??
    badNumber('end', 'The end', end, 'mm', { above: 0 }) ??
    badNumber('perMetre', 'The tolerance', perMetre, 'factor', { above: 0, most: 100 }) ??
    badNumber('toolPerMetre', 'The tool’s error', toolPerMetre, 'factor', { least: -200, most: 200 });
  if (bad) return bad;
  const allowed = (perMetre * end) / 1000;
  const hidden = detectable + (Math.abs(toolPerMetre) * end) / 1000;
  const out = Math.abs(slide);
  const verdict =
    out > allowed && out > hidden
      ? 'outside'
      : hidden > allowed
        ? 'unseen'
        : out + hidden > allowed
          ? 'close'
          : 'within';
  return {
    value: { verdict, allowed },
    working: {
      steps: [
        workingStep('slide allowed', phrase`${factor(perMetre)} thousandths of ${mm(end)}`, mm(allowed)),
        workingStep('what the readings hide', phrase`least slide shown, and the tool’s error`, mm(hidden)),
      ],
      sources: ['common-practice'],
    },
  };
}
