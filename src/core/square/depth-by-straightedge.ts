import { badNumber } from '../answer/bad-number.ts';
import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { badLength } from './check-readings.ts';

/**
 * How deep a hollow really is, seen under a straightedge that is itself out.
 *
 * @param seen mm, the deepest gap
 * @param over mm, how far the edge reaches across the hollow
 * @param edge its own error in mm (crowned positive, as `straightedgeTest` finds it) over its length in mm
 * @returns mm, 0 at least: a crowned edge fills a part of the hollow, a hollow one adds to it
 * @valid curves in one sweep, whose depth falls with the square of the chord
 * @errors `over` when it is no length or the edge does not reach across it, `seen` when it is no depth
 * @example depthByStraightedge(2, 450, { error: 0.4, length: 900 }) // => { value: 2.1 }
 * @source plane geometry
 */
export function depthByStraightedge(
  seen: number,
  over: number,
  edge: { readonly error: number; readonly length: number },
): Outcome<Worked> {
  const bad =
    badLength('length', 'The length of the straightedge', edge.length) ??
    badNumber('over', 'The width', over, 'mm', { above: 0, most: edge.length }) ??
    badNumber('seen', 'The gap', seen, 'mm', { least: 0, most: over });
  if (bad) return bad;
  return oneStep(
    'depth under a straight edge',
    phrase`${mm(seen)} ${edge.error < 0 ? '-' : '+'} ${mm(Math.abs(edge.error))} x (${mm(over)} / ${mm(edge.length)})²`,
    mm(Math.max(0, seen + edge.error * (over / edge.length) ** 2)),
    ['geometry'],
  );
}
