import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { mortiseLength } from '../../core/movement/mortise-length.ts';
import { type PartMovement, partMovement } from '../../core/movement/part-movement.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import { movingPart } from './joint-slots.ts';
import type { Judged } from './read-joint.ts';
import { woodOfPart } from './wood-of-part.ts';

/**
 * How long each mortise along a seam or mitre must be, mm: snug where the joint is glued; where it floats, the one nearest the
 * middle is snug and the others grow with their distance from it. The working is that of the longest.
 */
export function mortises(
  joint: Judged,
  seasons: Seasons,
  positions: readonly number[],
  width: number,
): Outcome<Worked<readonly number[]>> {
  const middle = joint.contact.length / 2;
  const fixed = positions.toSorted((a, b) => Math.abs(a - middle) - Math.abs(b - middle))[0] ?? middle;
  const lengths: number[] = [];
  let longest: Worked | undefined;
  for (const position of positions) {
    const distance = Math.abs(position - fixed);
    const floats =
      joint.verdict.value.advice !== 'glue' && distance > 0 ? movedApart(joint, seasons, distance) : undefined;
    if (isProblem(floats)) return floats;
    const found = mortiseLength({ width, ...(floats && { floats }) });
    if (isProblem(found)) return found;
    lengths.push(found.value);
    if (!longest || found.value > longest.value) longest = found;
  }
  return { value: lengths, working: longest?.working ?? { steps: [], sources: [] } };
}

/** How far the parts move apart over that distance: as the one moves whose grain crosses, or by the difference of two woods. */
function movedApart(
  joint: Judged,
  seasons: Seasons,
  distance: number,
): Outcome<Pick<PartMovement, 'shrink' | 'swell'>> {
  const moving = movingPart(joint);
  if (moving === undefined) {
    const { dry, wet } = joint.verdict.value;
    const share = distance / joint.contact.length;
    return { shrink: dry * share, swell: wet * share };
  }
  const moved = partMovement(woodOfPart(joint.parts[moving]), distance, seasons);
  return isProblem(moved) ? moved : moved.value;
}
