import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { badLength } from './check-readings.ts';

export interface Wind {
  /** How far one corner of the board stands off the plane of the other three, mm. */
  readonly wind: number;
  /** By how much the two sticks differ over their length, mm; null when they were not swapped. */
  readonly sticks: number | null;
}

/**
 * The wind of a board from sighting over two sticks longer than it is wide, and, when they are swapped and
 * sighted again, the sticks' own error, which changes sign while the wind does not.
 *
 * @param gap mm, gap between the sticks' top edges at the right end, positive when the far one stands higher there
 * @param swapped the same with the sticks swapped, or null
 * @param length of the sticks, mm, where the gap is seen
 * @param width of the board, mm
 * @returns mm over the width of the board
 * @valid sticks at least as long as the board is wide; a gap up to a tenth of them
 * @errors the field that is no length or out of range
 * @example windingSticks(3, 2, 600, 200).value // => { wind: 0.83, sticks: 0.5 }
 * @source plane geometry; the test is common practice
 */
export function windingSticks(
  gap: number,
  swapped: number | null,
  length: number,
  width: number,
): Outcome<Worked<Wind>> {
  const limits = { least: -length / 10, most: length / 10 };
  const bad =
    badLength('length', 'The length of the sticks', length) ??
    badNumber('width', 'The width', width, 'mm', { above: 0, most: length }) ??
    badNumber('gap', 'The gap', gap, 'mm', limits) ??
    badNumber('swapped', 'The gap with the sticks swapped', swapped ?? 0, 'mm', limits);
  if (bad) return bad;
  const over = swapped === null ? gap : (gap + swapped) / 2;
  const wind = (over * width) / length;
  const by = swapped === null ? phrase`as seen, sticks taken as true` : phrase`mean of ${mm(gap)} and ${mm(swapped)}`;
  return {
    value: { wind, sticks: swapped === null ? null : (gap - swapped) / 2 },
    working: {
      steps: [
        workingStep('wind over the sticks', by, mm(over)),
        workingStep('wind over the board', phrase`${mm(over)} x ${mm(width)} / ${mm(length)}`, mm(wind)),
      ],
      sources: ['geometry', 'common-practice'],
    },
  };
}
