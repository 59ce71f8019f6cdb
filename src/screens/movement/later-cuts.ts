import { isProblem } from '../../core/answer/problem.ts';
import type { Joint } from '../../store/records/piece.ts';
import { foldLayout } from '../breakdown/fold-edits.ts';
import { jointKind } from './joint-kinds.ts';
import type { Judged } from './read-joint.ts';

/** What is cut off or through a seam after it is glued; mm. */
export interface LaterCuts {
  /** What a mitre takes off each end. */
  readonly bevel: number;
  /** Middles of the cuts of a panel that folds, from one end. */
  readonly crosscuts: readonly number[];
  /** How far such a cut and its bevels reach to each side. */
  readonly reach: number;
}

/** What the piece already says of later cuts along a seam: mitres of its parts, and the cuts where a panel folds. */
export function laterCuts({ parts, meets }: Judged, joints: readonly Joint[], kerf: number): LaterCuts {
  // Other joints run along the parts' ends, where nothing is cut off later.
  const alongParts = parts.filter((_, at) => meets[at]?.surface === 'edge');
  const mitred = alongParts.filter(({ id }) => joints.some((joint) => mitresEnd(joint, id)));
  const cuts = alongParts.flatMap((part) => {
    const layout = foldLayout(part, kerf);
    if (!layout || isProblem(layout)) return [];
    return layout.cuts.map(({ at, takes, bevel }) => ({
      at: at + takes.value / 2,
      reach: takes.value / 2 + part.thickness * Math.tan((bevel * Math.PI) / 180),
    }));
  });
  return {
    bevel: Math.max(0, ...mitred.map(({ thickness }) => thickness)),
    crosscuts: [...new Set(cuts.map(({ at }) => at))].sort((a, b) => a - b),
    reach: Math.max(kerf / 2, ...cuts.map(({ reach }) => reach)),
  };
}

/** Whether a square mitre across the grain ends this part: at 45 degrees it takes as much as the part is thick. */
function mitresEnd({ kind, parts, meets = jointKind(kind)?.meets }: Joint, id: string): boolean {
  return parts.some((part, at) => part === id && meets?.[at]?.surface === 'mitre' && meets[at].grain === 'across');
}
