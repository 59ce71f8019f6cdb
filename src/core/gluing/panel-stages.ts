import { firstBad, type NumberCheck } from '../answer/bad-number.ts';
import type { Outcome } from '../answer/problem.ts';
import { sumOf } from '../answer/sum-of.ts';
import type { Needing } from './can-begin-now.ts';
import type { Seam } from './seam.ts';

export interface Panel {
  readonly id: string;
  readonly name: string;
  /** mm */
  readonly length: number;
  /** mm; also the width of its seams */
  readonly thickness: number;
  /** Widths of the strips of each sub-panel in mm, in the order in which they lie; one group when it is glued in one go. */
  readonly groups: readonly (readonly number[])[];
}

export interface GlueStage extends Needing {
  readonly seams: readonly Seam[];
  /** mm across what this stage glues. */
  readonly width: number;
  /** mm, the outermost board: how far a clamp's pressure spreads before the first seam. */
  readonly outerBoard: number;
}

const total = (widths: readonly number[]) => sumOf(widths, (width) => width);

function badPanel({ length, thickness, groups, name }: Panel) {
  return firstBad([
    ['length', `The length of ${name}`, length, 'mm', { above: 0, most: 12000 }],
    ['thickness', `The thickness of ${name}`, thickness, 'mm', { above: 0, most: 500 }],
    [
      'groups',
      `The number of strips of ${name}`,
      Math.min(groups.length, ...groups.map((strips) => strips.length)),
      'count',
      { above: 0 },
    ],
    ...groups.flatMap((strips, at) =>
      strips.map(
        (width, n): NumberCheck => [
          `groups.${at}.${n}`,
          `The width of a strip of ${name}`,
          width,
          'mm',
          { above: 0, most: 2000 },
        ],
      ),
    ),
  ]);
}

/**
 * The glue-ups of one panel: each sub-panel of several strips, then the panel from the sub-panels.
 *
 * @param panel sizes in mm
 * @returns stages with their seams (length by thickness, mm) and what each needs; none when the panel is one strip
 * @valid strips side by side, all as long as the panel
 * @errors a missing size, no strips, a group without any
 * @example panelStages({ id: 'lid', name: 'Lid', length: 1000, thickness: 20, groups: [[100, 100], [100, 100]] }).map(
 *   ({ seams }) => seams.length,
 * ) // => [1, 1, 1]
 * @source common practice
 */
export function panelStages(panel: Panel): Outcome<readonly GlueStage[]> {
  const bad = badPanel(panel);
  if (bad) return bad;
  const { id, name, length, thickness, groups } = panel;
  const stage = (id: string, name: string, boards: readonly number[], needs: readonly string[] = []): GlueStage[] =>
    boards.length === 1
      ? []
      : [
          {
            id,
            name,
            needs,
            seams: boards.slice(1).map(() => ({ length, width: thickness })),
            width: total(boards),
            outerBoard: Math.min(boards[0] as number, boards.at(-1) as number),
          },
        ];
  if (groups.length === 1) return stage(id, name, groups.flat());
  const subPanels = groups.flatMap((strips, at) => stage(`${id}/${at + 1}`, `${name}, sub-panel ${at + 1}`, strips));
  const needs = subPanels.map((sub) => sub.id);
  return [...subPanels, ...stage(id, name, groups.map(total), needs)];
}
