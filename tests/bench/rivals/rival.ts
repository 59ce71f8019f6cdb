import { Draft } from '../../../src/core/breakdown/draft.ts';
import type { BreakdownPlan, BreakdownProblem } from '../../../src/core/breakdown/problem-types.ts';
import { type Rack, rackOf, type Unit } from '../../../src/core/breakdown/rack.ts';
import { settle } from '../../../src/core/breakdown/settle.ts';
import { widestStrip } from '../../../src/core/breakdown/strip-limits.ts';

/** Another way to plan, to measure the shipped search against; never shipped. */
export interface Rival {
  readonly name: string;
  plan(asked: BreakdownProblem): BreakdownPlan | Promise<BreakdownPlan>;
}

/** A blank of a run and what it gives: strips of these widths for these units. */
export interface Pattern {
  readonly runAt: number;
  readonly length: number;
  readonly strips: readonly { readonly unit: number; readonly width: number }[];
}

/** Lays patterns out on their boards. */
export function laidOut(asked: BreakdownProblem, patterns: readonly Pattern[]): BreakdownPlan {
  const draft = new Draft(rackOf(asked));
  for (const { runAt, length, strips } of patterns) {
    const blankAt = draft.open(runAt, length);
    for (const { unit, width } of strips) {
      draft.rip(blankAt, unit, width, 1);
      const edges = draft.rack.units[unit]?.part.panel ? draft.rack.shop.edgeAllowance : 0;
      draft.missing[unit] = Math.max(0, (draft.missing[unit] ?? 0) - width + edges);
    }
  }
  return settle(draft);
}

/** The area of board that a blank of a run takes, mm2. */
export const woodOf = ({ runs, shop }: Rack, runAt: number, length: number): number =>
  (runs[runAt]?.board.width ?? 0) * (length + shop.crosscutKerf);

/** Whether a blank of a run, as long as this, can give a strip for a solid unit. */
export function givesSolid({ shop, runs, maySupply }: Rack, unit: Unit, runAt: number, length: number): boolean {
  const run = runs[runAt];
  if (!run || !maySupply(unit.partAt, run.boardAt) || unit.blankLength > length || run.width < unit.need) return false;
  return widestStrip(shop, run.board, unit.part, length) >= unit.need;
}

/** How much a whole blank of a run gives for a unit: width of a panel, or pieces of a solid part. */
export function yieldOf(rack: Rack, unit: Unit, runAt: number): number {
  const run = rack.runs[runAt];
  if (!run || !rack.maySupply(unit.partAt, run.boardAt)) return 0;
  if (unit.part.panel) return rack.wholeBlank(unit, runAt).gives;
  const { ripKerf } = rack.shop;
  return givesSolid(rack, unit, runAt, unit.blankLength)
    ? Math.floor((run.width + ripKerf) / (unit.need + ripKerf))
    : 0;
}

/** What is made in one go: one panel, or all pieces of a solid part; `need` in mm of width, or in pieces. */
export interface Job {
  readonly unit: Unit;
  readonly units: readonly number[];
  readonly need: number;
}

/** The jobs of a rack, longest blanks first. */
export function jobsOf({ units }: Rack): Job[] {
  const jobs = new Map<string, Job>();
  for (const [at, unit] of units.entries()) {
    const key = unit.part.panel ? `${unit.part.id}#${unit.unit}` : unit.part.id;
    const together = [...(jobs.get(key)?.units ?? []), at];
    jobs.set(key, { unit, units: together, need: unit.part.panel ? unit.need : together.length });
  }
  return [...jobs.values()].sort((a, b) => b.unit.blankLength - a.unit.blankLength);
}

/** A whole blank for one job, ripped as far as the job still needs: `made` of it is there already. */
export function wholeBlankFor(rack: Rack, job: Job, runAt: number, made: number): Pattern {
  const { unit, units } = job;
  const rips = rack.wholeBlank(unit, runAt);
  const strips = unit.part.panel
    ? Array.from({ length: rips.strips }, () => ({ unit: units[0] ?? 0, width: rips.width }))
    : units.slice(made, made + yieldOf(rack, unit, runAt)).map((at) => ({ unit: at, width: unit.need }));
  return { runAt, length: unit.blankLength, strips };
}

/** Free length of every run, with the kerf that the last blank doesn't need. */
export const roomOf = ({ runs, shop }: Rack): Float64Array =>
  Float64Array.from(runs, ({ length }) => length + shop.crosscutKerf);
