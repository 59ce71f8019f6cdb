import { isProblem, type Outcome, within } from '../answer/problem.ts';
import type { Worked } from '../answer/worked.ts';
import { type JointVerdict, jointVerdict } from './joint-verdict.ts';
import type { Wood } from './part-movement.ts';
import type { SeasonMoisture } from './seasons.ts';

/** One of the four panels of a mitred case. */
export interface CasePanel {
  readonly name: string;
  /** Whether its grain runs on around the case, or crosses: runs front to back, along the corners. */
  readonly grain: 'around' | 'front-to-back';
  readonly wood: Wood;
  /** Percent moisture. */
  readonly today: number;
}

export interface FoldedCase {
  /** In order around the case: each meets the next, the last the first. */
  readonly panels: readonly [CasePanel, CasePanel, CasePanel, CasePanel];
  /** Front to back, along the corners, mm. */
  readonly depth: number;
  readonly seasons: SeasonMoisture;
  readonly limit?: number;
}

export interface CaseCorner {
  readonly panels: readonly [string, string];
  readonly verdict: Worked<JointVerdict>;
}

/**
 * A verdict for each of the four corners of a mitred case whose panels fold around it.
 *
 * @param box four panels in order around the case, the depth of the case in mm, moisture of the seasons in percent, the limit in mm
 * @returns four corners: panel 1 to 2, 2 to 3, 3 to 4, 4 to 1
 *
 * Valid: as `jointVerdict`.
 * Errors: a `Problem` under the number of the corner, or on `depth`.
 * Example: three panels with the grain around and a back one that crosses: two corners glued, two aligned.
 * Source: as `jointVerdict`.
 */
export function foldedCaseCorners({ panels, depth, seasons, limit }: FoldedCase): Outcome<readonly CaseCorner[]> {
  const corners: CaseCorner[] = [];
  for (const [index, panel] of panels.entries()) {
    const next = panels[(index + 1) % panels.length] as CasePanel;
    const verdict = jointVerdict({
      first: mitred(panel),
      second: mitred(next),
      length: depth,
      seasons,
      ...(limit !== undefined && { limit }),
    });
    if (isProblem(verdict))
      return verdict.field === 'length' ? { ...verdict, field: 'depth' } : within(verdict, `corners.${index}`);
    corners.push({ panels: [panel.name, next.name], verdict });
  }
  return corners;
}

function mitred({ name, grain, wood, today }: CasePanel) {
  return { name, wood, today, surface: 'mitre', grain: grain === 'around' ? 'across' : 'along' } as const;
}
