import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { degrees, mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';

export interface MitreGap {
  /** Widest opening, mm. */
  readonly gap: number;
  /** Where it opens while the other end of the joint touches; null when it is tight. */
  readonly opens: 'inside' | 'outside' | null;
}

/**
 * How far a mitre opens when the two points that meet do not add up to the corner, the corner held square.
 *
 * @param error degrees, the sum of both points less 90, positive when the points are too blunt
 * @param joint mm, length of the mitre from heel to toe
 * @returns mm, and the side: points too sharp touch outside and open inside, too blunt touch inside and open outside
 * @valid errors up to 10 degrees
 * @errors `error` or `joint` out of range
 * @example mitreGap(-0.5, 28.3).value // => { gap: 0.25, opens: 'inside' }
 * @source plane geometry
 */
export function mitreGap(error: number, joint: number): Outcome<Worked<MitreGap>> {
  const bad =
    badNumber('error', 'The angle error', error, 'degrees', { least: -10, most: 10 }) ??
    badNumber('joint', 'The length of the mitre', joint, 'mm', { above: 0, most: 2000 });
  if (bad) return bad;
  const gap = joint * Math.tan((Math.abs(error) * Math.PI) / 180);
  return {
    value: { gap, opens: error === 0 ? null : error < 0 ? 'inside' : 'outside' },
    working: {
      steps: [workingStep('opening', phrase`${mm(joint)} x tangent of ${degrees(Math.abs(error))}`, mm(gap))],
      holds: phrase`Corner held square.`,
      sources: ['geometry'],
    },
  };
}
