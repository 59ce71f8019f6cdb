import { badNumber } from '../answer/bad-number.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome, problem } from '../answer/problem.ts';
import { count, degrees } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { type MitreGap, mitreGap } from './mitre-gap.ts';

export interface MitreFrame {
  /** What all the cuts add up to beyond 360 degrees. */
  readonly sum: number;
  /** How the last corner opens when the other three are pulled tight. */
  readonly last: MitreGap;
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
 * @param errors degrees, eight of them, each point's angle less 45
 * @param joint mm, length of a mitre
 * @returns degrees and mm
 * @valid four corners, opposite parts equal (see `oppositeParts`)
 * @errors `errors` when there are not eight or one is out of range; `joint` out of range
 * @example mitreFrame(Array(8).fill(-0.1), 80).value
 *   // => { sum: -0.8, last: { gap: 1.1, opens: 'inside' }, eachCut: 0.1 }
 * @source plane geometry: the angles of a quadrilateral add up to 360 degrees (Euclid I.32)
 */
export function mitreFrame(errors: readonly number[], joint: number): Outcome<Worked<MitreFrame>> {
  if (errors.length !== 8) return problem('errors', 'A frame has {cuts} mitre cuts. Give all.', { cuts: count(8) });
  for (const [index, error] of errors.entries()) {
    const bad = badNumber(`errors.${index}`, 'The angle error', error, 'degrees', { least: -5, most: 5 });
    if (bad) return bad;
  }
  const sum = errors.reduce((total, error) => total + error, 0);
  if (Math.abs(sum) > 10)
    return problem('errors', 'Together the cuts are more than {most} off. Set the saw again.', { most: degrees(10) });
  const last = mitreGap(sum, joint);
  if (isProblem(last)) return last;
  const eachCut = 0 - sum / 8;
  const change = { each: degrees(Math.abs(eachCut)) };
  return {
    value: {
      sum,
      last: last.value,
      eachCut,
      lastCorner: 0 - sum / 2,
      say:
        last.value.opens === null
          ? phrase('The last corner closes.')
          : phrase(`Cut every point {each} ${eachCut > 0 ? 'blunter' : 'sharper'} and the last corner closes.`, change),
    },
    working: {
      steps: [
        {
          finds: 'all cuts together',
          by: phrase('errors of {cuts} cuts added', { cuts: count(8) }),
          gives: degrees(sum),
        },
        ...last.working.steps,
        {
          finds: 'change of each cut',
          by: phrase('{sum} / {cuts}, the other way', { sum: degrees(sum), cuts: count(8) }),
          gives: degrees(eachCut),
        },
      ],
      holds: phrase('Make opposite parts equal first.'),
      sources: ['geometry'],
    },
  };
}
