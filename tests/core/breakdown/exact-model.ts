import highsLoader, { type Highs } from 'highs';
import type { BreakdownProblem } from '../../../src/core/breakdown/problem-types.ts';
import { rackOf } from '../../../src/core/breakdown/rack.ts';
import { widestStrip } from '../../../src/core/breakdown/strip-limits.ts';

/** What HiGHS, a general-purpose solver of mixed-integer programs, says about a breakdown. */
export interface ExactAnswer {
  readonly status: string;
  /** Consumed area, m2. */
  readonly area: number;
}

let solver: Promise<Highs> | undefined;

/** Solves a model in CPLEX's LP format. */
async function solve(lines: string[], seconds: number): Promise<ExactAnswer> {
  solver ??= highsLoader();
  const answer = (await solver).solve(lines.join('\n'), { mip_rel_gap: 1e-6, time_limit: seconds, output_flag: false });
  return { status: answer.Status, area: answer.ObjectiveValue / 1e6 };
}

/** A sum in LP format, in short lines. */
const sum = (terms: readonly string[]): string => (terms.length === 0 ? '0 none' : terms.join('\n + '));

/**
 * The least wood over plans where each blank serves one unit, or solids of one part, and is ripped equally:
 * x counts the blanks of one board for one unit.
 */
export function solveUnshared(asked: BreakdownProblem, seconds: number): Promise<ExactAnswer> {
  const rack = rackOf(asked);
  const { shop } = asked;
  const cost: string[] = [];
  const integers: string[] = [];
  const rows: string[] = [];
  const room = rack.runs.map((): string[] => []);
  const column = (runAt: number, name: string, blank: number) => {
    integers.push(name);
    cost.push(`${(rack.runs[runAt]?.board.width ?? 0) * (blank + shop.crosscutKerf)} ${name}`);
    room[runAt]?.push(`${blank + shop.crosscutKerf} ${name}`);
  };
  for (const [unitAt, unit] of rack.units.entries()) {
    if (!unit.part.panel && unit.unit > 1) continue;
    const gives: string[] = [];
    for (const [runAt, run] of rack.runs.entries()) {
      if (run.board.species !== unit.part.species || run.length < unit.blankLength) continue;
      const rips = rack.wholeBlank(unit, runAt);
      const fits = widestStrip(shop, run.board, unit.part, unit.blankLength) >= unit.need;
      const pieces = fits ? Math.floor((run.width + shop.ripKerf) / (unit.need + shop.ripKerf)) : 0;
      const given = unit.part.panel ? rips.gives : pieces;
      if (given <= 0) continue;
      gives.push(`${given} x_${runAt}_${unitAt}`);
      column(runAt, `x_${runAt}_${unitAt}`, unit.blankLength);
    }
    rows.push(`u${unitAt}: ${sum(gives)} >= ${unit.part.panel ? unit.need : unit.part.quantity}`);
  }
  for (const [runAt, run] of rack.runs.entries())
    if (room[runAt]?.length) rows.push(`r${runAt}: ${sum(room[runAt])} <= ${run.length + shop.crosscutKerf}`);
  return solve(['Minimize', sum(cost), 'Subject To', ...rows, 'General', integers.join('\n'), 'End'], seconds);
}

/**
 * The least wood over all plans: blanks of any board may be ripped anyhow and serve any units.
 * z says that a place on a board holds a blank of a length; n counts its strips for a unit; w is their width together.
 */
export function solveShared(asked: BreakdownProblem, seconds: number): Promise<ExactAnswer> {
  const rack = rackOf(asked);
  const { shop } = asked;
  const lengths = [...new Set(rack.units.map((unit) => unit.blankLength))];
  const shortest = Math.min(...lengths) + shop.crosscutKerf;
  const cost: string[] = [];
  const rows: string[] = [];
  const binaries: string[] = [];
  const integers: string[] = [];
  const given = rack.units.map((): string[] => []);
  for (const [runAt, run] of rack.runs.entries()) {
    const room: string[] = [];
    for (let place = 0; place < Math.floor((run.length + shop.crosscutKerf) / shortest); place++) {
      const choices: string[] = [];
      for (const [lengthAt, length] of lengths.entries()) {
        const z = `z_${runAt}_${place}_${lengthAt}`;
        const used: string[] = [];
        for (const [unitAt, { part, need, blankLength }] of rack.units.entries()) {
          const widest = widestStrip(shop, run.board, part, length);
          const least = part.panel ? shop.minStrip : need;
          if (part.species !== run.board.species || blankLength > length || widest < least) continue;
          const most = part.panel ? Math.floor((run.width + shop.ripKerf) / (shop.minStrip + shop.ripKerf)) : 1;
          const n = `n_${runAt}_${place}_${lengthAt}_${unitAt}`;
          const w = n.replace('n', 'w');
          rows.push(`${n} - ${most} ${z} <= 0`, `${w} - ${least} ${n} >= 0`);
          rows.push(`${w} - ${part.panel ? widest : need} ${n} <= 0`);
          used.push(`${w} + ${shop.ripKerf} ${n}`);
          given[unitAt]?.push(part.panel ? `${w} - ${shop.edgeAllowance} ${n}` : n);
          integers.push(n);
        }
        if (used.length === 0) continue;
        rows.push(`${sum(used)} - ${run.width + shop.ripKerf} ${z} <= 0`);
        choices.push(z);
        binaries.push(z);
        cost.push(`${run.board.width * (length + shop.crosscutKerf)} ${z}`);
        room.push(`${length + shop.crosscutKerf} ${z}`);
      }
      if (choices.length > 0) rows.push(`${sum(choices)} <= 1`);
    }
    if (room.length > 0) rows.push(`${sum(room)} <= ${run.length + shop.crosscutKerf}`);
  }
  for (const [unitAt, { part, need }] of rack.units.entries())
    rows.push(`${sum(given[unitAt] ?? [])} >= ${part.panel ? need : 1}`);
  const model = ['Minimize', sum(cost), 'Subject To', ...rows, 'Binary', binaries.join('\n'), 'General'];
  return solve([...model, integers.join('\n'), 'End'], seconds);
}
