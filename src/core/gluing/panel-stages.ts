import { firstBad } from '../answer/bad-number.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import type { Seam } from './seam.ts';
import type { Needing } from './stage-order.ts';

export interface Panel {
  readonly id: string;
  readonly name: string;
  /** mm */
  readonly length: number;
  /** mm; also the width of its seams */
  readonly thickness: number;
  /** Widths in mm, in the order in which they lie. */
  readonly strips: readonly number[];
}

export interface GlueStage extends Needing {
  readonly seams: readonly Seam[];
  /** mm across what this stage glues. */
  readonly width: number;
  /** mm, the outermost board: how far a clamp's pressure spreads before the first seam. */
  readonly outerBoard: number;
}

const total = (widths: readonly number[]) => widths.reduce((sum, width) => sum + width, 0);

function badPanel({ length, thickness, strips, name }: Panel, groups: readonly number[]) {
  return (
    firstBad([
      ['length', `The length of ${name}`, length, 'mm', { above: 0, most: 12000 }],
      ['thickness', `The thickness of ${name}`, thickness, 'mm', { above: 0, most: 500 }],
      ['strips', `The number of strips of ${name}`, strips.length, 'count', { above: 0 }],
    ]) ??
    firstBad(
      strips.map((width, at) => [
        `strips.${at}`,
        `The width of strip ${at + 1}`,
        width,
        'mm',
        { above: 0, most: 2000 },
      ]),
    ) ??
    firstBad(
      groups.map((size, at) => [`groups.${at}`, 'The number of strips', size, 'count', { least: 1, whole: true }]),
    ) ??
    (total(groups) === strips.length
      ? undefined
      : problem('groups', `The sub-panels of ${name} must hold each of its strips once.`))
  );
}

/**
 * The glue-ups of one panel: each sub-panel of several strips, then the panel from the sub-panels.
 *
 * @param panel sizes in mm
 * @param groups how many neighbouring strips make each sub-panel, in order; they add up to all strips
 * @returns stages with their seams (length by thickness, mm) and what each needs; none when the panel is one strip
 * @valid strips side by side, all as long as the panel
 * @errors a missing size, a group of 0, groups that don't add up to the strips
 * @example panelStages({ id: 'lid', name: 'Lid', length: 1000, thickness: 20, strips: [100, 100, 100, 100] }, [2, 2]).map(
 *   ({ seams }) => seams.length,
 * ) // => [1, 1, 1]
 * @source common practice
 */
export function panelStages(panel: Panel, groups: readonly number[]): Outcome<readonly GlueStage[]> {
  const bad = badPanel(panel, groups);
  if (bad) return bad;
  const { id, name, length, thickness, strips } = panel;
  const stage = (id: string, name: string, boards: readonly number[], needs: readonly string[] = []): GlueStage => ({
    id,
    name,
    needs,
    seams: boards.slice(1).map(() => ({ length, width: thickness })),
    width: total(boards),
    outerBoard: Math.min(boards[0] as number, boards.at(-1) as number),
  });
  if (strips.length === 1) return [];
  if (groups.length === 1) return [stage(id, name, strips)];

  const subPanels = groups.map((size, at) => {
    const before = total(groups.slice(0, at));
    return strips.slice(before, before + size);
  });
  const glued = subPanels.flatMap((boards, at) =>
    boards.length > 1 ? [stage(`${id}/${at + 1}`, `${name}, sub-panel ${at + 1}`, boards)] : [],
  );
  return [
    ...glued,
    stage(
      id,
      name,
      subPanels.map(total),
      glued.map((sub) => sub.id),
    ),
  ];
}
