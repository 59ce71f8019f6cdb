import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
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
 * @param seen mm, gap between the sticks' top edges at the right end, positive when the far one stands higher there
 * @param swapped the same with the sticks swapped, or null
 * @param stickLength mm, where the gap is seen
 * @param width of the board, mm
 * @returns mm over the width of the board
 * @valid sticks at least as long as the board is wide; a gap up to a tenth of them
 * @errors the field that is no length or out of range
 * @example windingSticks(3, 2, 600, 200).value // => { wind: 0.83, sticks: 0.5 }
 * @source plane geometry; the test is common practice
 */
export function windingSticks(
  seen: number,
  swapped: number | null,
  stickLength: number,
  width: number,
): Outcome<Worked<Wind>> {
  const bad =
    badLength('stickLength', 'The length of the sticks', stickLength) ??
    badNumber('width', 'The width', width, 'mm', { above: 0, most: stickLength }) ??
    badNumber('seen', 'The gap', seen, 'mm', { least: -stickLength / 10, most: stickLength / 10 }) ??
    (swapped === null
      ? undefined
      : badNumber('swapped', 'The gap with the sticks swapped', swapped, 'mm', {
          least: -stickLength / 10,
          most: stickLength / 10,
        }));
  if (bad) return bad;
  const overSticks = swapped === null ? seen : (seen + swapped) / 2;
  const wind = (overSticks * width) / stickLength;
  return {
    value: { wind, sticks: swapped === null ? null : (seen - swapped) / 2 },
    working: {
      steps: [
        swapped === null
          ? { finds: 'wind over the sticks', by: phrase('as seen, sticks taken as true'), gives: mm(overSticks) }
          : {
              finds: 'wind over the sticks',
              by: phrase('mean of {seen} and {swapped}', { seen: mm(seen), swapped: mm(swapped) }),
              gives: mm(overSticks),
            },
        {
          finds: 'wind over the board',
          by: phrase('{over} x {width} / {sticks}', {
            over: mm(overSticks),
            width: mm(width),
            sticks: mm(stickLength),
          }),
          gives: mm(wind),
        },
      ],
      sources: ['geometry', 'common-practice'],
    },
  };
}
