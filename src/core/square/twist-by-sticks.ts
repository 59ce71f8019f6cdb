import { badNumber } from '../answer/bad-number.ts';
import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { badLength } from './check-readings.ts';

/**
 * How far one corner of a board lifts, from one sight over winding sticks that differ.
 *
 * @param seen mm, the gap at the ends of the sticks, whichever way
 * @param width of the board, mm
 * @param sticks by how much they differ in mm (either sign, as `windingSticks` finds it) over their length in mm
 * @returns mm over the width of the board, at its most: one sight doesn't say whether the sticks add to it or hide some
 * @valid sticks at least as long as the board is wide
 * @errors `width` when the sticks don't reach across it, `seen` when it is no gap or more than a tenth of the sticks
 * @example twistBySticks(3, 200, { error: 0.6, length: 600 }) // => { value: 1.2 }
 * @source plane geometry
 */
export function twistBySticks(
  seen: number,
  width: number,
  sticks: { readonly error: number; readonly length: number },
): Outcome<Worked> {
  const bad =
    badLength('length', 'The length of the sticks', sticks.length) ??
    badNumber('width', 'The width', width, 'mm', { above: 0, most: sticks.length }) ??
    badNumber('seen', 'The gap', seen, 'mm', { least: 0, most: sticks.length / 10 });
  if (bad) return bad;
  return oneStep(
    'twist at its most',
    phrase`(${mm(seen)} + ${mm(Math.abs(sticks.error))}) x ${mm(width)} / ${mm(sticks.length)}`,
    mm(((seen + Math.abs(sticks.error)) * width) / sticks.length),
    ['geometry'],
  );
}
