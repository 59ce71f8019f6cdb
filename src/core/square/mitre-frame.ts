import { badNumber, firstBad } from '../answer/bad-number.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome, problem } from '../answer/problem.ts';
import { count, degrees } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { type MitreGap, mitreGap } from './mitre-gap.ts';
import { cornerNames } from './readings.ts';

export interface MitreFrame {
  /** What all the cuts add up to beyond 360 degrees. */
  readonly sum: number;
  /** How the last corner opens when the other three are pulled tight. */
  readonly last: MitreGap;
  /** How each corner opens by itself, held square, from A on. */
  readonly corners: readonly MitreGap[];
  /** Change of every cut's angle that closes it, degrees. */
  readonly eachCut: number;
  /** Or the change of the last corner's two cuts alone, degrees. */
  readonly lastCorner: number;
  readonly say: Phrase;
}

/**
 * How the errors of a frame's eight mitre cuts add up to the gap at the last corner, and how to share the
 * correction.
 *
 * @param errors degrees, eight of them, each point's angle less 45: two at each corner, from A on
 * @param joint mm, length of a mitre
 * @returns degrees and mm
 * @valid four corners, opposite parts equal (see `oppositeParts`)
 * @errors `errors` when there are not eight or one, or their sum, is out of range; `joint` out of range
 * @example mitreFrame(Array(8).fill(-0.1), 80).value
 *   // => { sum: -0.8, last: { gap: 1.1, opens: 'inside' }, eachCut: 0.1 }
 * @source plane geometry: the angles of a quadrilateral add up to 360 degrees (Euclid I.32)
 */
export function mitreFrame(errors: readonly number[], joint: number): Outcome<Worked<MitreFrame>> {
  if (errors.length !== 8) return problem('errors', phrase`A frame has ${count(8)} mitre cuts. Give all.`);
  const sum = errors.reduce((total, error) => total + error, 0);
  const bad =
    firstBad(
      errors.map((error, at) => [`errors.${at}`, 'The angle error', error, 'degrees', { least: -5, most: 5 }]),
    ) ?? badNumber('errors', 'The sum of the errors', sum, 'degrees', { least: -10, most: 10 });
  if (bad) return bad;
  const last = mitreGap(sum, joint);
  if (isProblem(last)) return last;
  const corners = cornerNames.flatMap((corner, at) => {
    const gap = mitreGap((errors[2 * at] ?? 0) + (errors[2 * at + 1] ?? 0), joint);
    return isProblem(gap) ? [] : [{ corner, ...gap }];
  });
  const eachCut = 0 - sum / 8;
  return {
    value: {
      sum,
      last: last.value,
      corners: corners.map(({ value }) => value),
      eachCut,
      lastCorner: 0 - sum / 2,
      say:
        last.value.opens === null
          ? phrase`The last corner closes.`
          : phrase`Cut every point ${degrees(Math.abs(eachCut))} ${eachCut > 0 ? 'blunter' : 'sharper'} and the last corner closes.`,
    },
    working: {
      steps: [
        workingStep('all cuts together', phrase`errors of ${count(8)} cuts added`, degrees(sum)),
        ...last.working.steps,
        workingStep('change of each cut', phrase`${degrees(sum)} / ${count(8)}, the other way`, degrees(eachCut)),
        ...corners.flatMap(({ corner, working }) =>
          working.steps.map((step) => ({ ...step, finds: `opening at ${corner}, held square` })),
        ),
      ],
      holds: phrase`Make opposite parts equal first.`,
      sources: ['geometry'],
    },
  };
}
