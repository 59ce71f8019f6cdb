import { badNumber } from '../answer/bad-number.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Seam } from './seam.ts';
import type { Needing } from './stage-order.ts';

/** One strip of a panel, in the order in which it lies. */
export interface Strip {
  readonly id: string;
  /** mm */
  readonly width: number;
}

export interface Panel {
  readonly id: string;
  readonly name: string;
  /** mm */
  readonly length: number;
  /** mm; also the width of its seams */
  readonly thickness: number;
  readonly strips: readonly Strip[];
}

export interface GlueStage extends Needing {
  readonly seams: readonly Seam[];
  /** mm across what this stage glues. */
  readonly width: number;
  /** mm, the outermost board: how far a clamp's pressure spreads before the first seam. */
  readonly outerBoard: number;
}

const total = (strips: readonly Strip[]) => strips.reduce((sum, { width }) => sum + width, 0);

function badPanel({ length, thickness, strips, name }: Panel) {
  const bad =
    badNumber('length', `The length of ${name}`, length, 'mm', { above: 0, most: 12000 }) ??
    badNumber('thickness', `The thickness of ${name}`, thickness, 'mm', { above: 0, most: 500 });
  if (bad) return bad;
  if (strips.length === 0) return problem('strips', `${name} has no strips. Add them.`);
  for (const [index, { width }] of strips.entries()) {
    const nth = badNumber(`strips.${index}.width`, `The width of strip ${index + 1}`, width, 'mm', {
      above: 0,
      most: 2000,
    });
    if (nth) return nth;
  }
  return undefined;
}

/**
 * The glue-ups of one panel: each sub-panel of several strips, then the panel from the sub-panels.
 *
 * @param panel sizes in mm, strips in the order in which they lie
 * @param groups how many neighbouring strips make each sub-panel, in order; they add up to all strips
 * @returns stages with their seams (length by thickness, mm) and what each needs; none when the panel is one strip
 *
 * Valid: strips side by side, all as long as the panel.
 * Errors: a missing size, a group of 0, groups that don't add up to the strips.
 * Example: 4 strips in groups 2 and 2: two stages with one seam each, then one with one seam that needs both.
 * Source: common practice.
 */
export function panelStages(panel: Panel, groups: readonly number[]): Outcome<readonly GlueStage[]> {
  const bad = badPanel(panel);
  if (bad) return bad;
  const { id, name, length, thickness, strips } = panel;
  for (const [index, size] of groups.entries()) {
    const wrong = badNumber(`groups.${index}`, 'The number of strips', size, 'count', { least: 1, whole: true });
    if (wrong) return wrong;
  }
  if (groups.reduce((sum, size) => sum + size, 0) !== strips.length)
    return problem('groups', `The sub-panels of ${name} must hold each of its strips once.`);

  const parts: Strip[][] = [];
  let next = 0;
  for (const size of groups) {
    parts.push(strips.slice(next, next + size));
    next += size;
  }
  const seams = (number: number): Seam[] => Array.from({ length: number }, () => ({ length, width: thickness }));
  const stage = (
    stageId: string,
    stageName: string,
    boards: readonly number[],
    needs: readonly string[],
  ): GlueStage => ({
    id: stageId,
    name: stageName,
    needs,
    seams: seams(boards.length - 1),
    width: boards.reduce((sum, width) => sum + width, 0),
    outerBoard: Math.min(boards[0] ?? 0, boards.at(-1) ?? 0),
  });

  if (parts.length === 1) {
    const boards = strips.map(({ width }) => width);
    return boards.length === 1 ? [] : [stage(id, name, boards, [])];
  }
  const subPanels = parts.flatMap((part, index) =>
    part.length === 1
      ? []
      : [
          stage(
            `${id}/${index + 1}`,
            `${name}, sub-panel ${index + 1}`,
            part.map(({ width }) => width),
            [],
          ),
        ],
  );
  return [
    ...subPanels,
    stage(
      id,
      name,
      parts.map(total),
      subPanels.map((sub) => sub.id),
    ),
  ];
}

/**
 * Sub-panels that each still pass the planer: as few as can be, filled from one side.
 *
 * Takes a panel and the planer's width, mm; returns how many strips make each sub-panel. A strip wider than the planer
 * is a problem at `strips.N.width`. Example: strips of 100, 100, 100 and 100 mm, planer 260 mm: 2 and 2.
 */
export function subPanelGroups(panel: Panel, planerWidth: number): Outcome<readonly number[]> {
  const bad = badPanel(panel) ?? badNumber('planerWidth', "The planer's width", planerWidth, 'mm', { above: 0 });
  if (bad) return bad;
  const groups: number[] = [];
  let filled = Number.POSITIVE_INFINITY;
  for (const [index, { width }] of panel.strips.entries()) {
    if (width > planerWidth)
      return problem(
        `strips.${index}.width`,
        `Strip ${index + 1} is {wide} wide and the planer takes {planer}. Rip it.`,
        {
          wide: mm(width),
          planer: mm(planerWidth),
        },
      );
    if (filled + width > planerWidth) {
      groups.push(1);
      filled = width;
    } else {
      groups.push((groups.pop() ?? 0) + 1);
      filled += width;
    }
  }
  return groups;
}
