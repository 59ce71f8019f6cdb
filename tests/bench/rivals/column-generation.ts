import { fewestRips } from '../../../src/core/breakdown/fewest-rips.ts';
import { type Rack, rackOf } from '../../../src/core/breakdown/rack.ts';
import { widestStrip } from '../../../src/core/breakdown/strip-limits.ts';
import { greedy } from './greedy.ts';
import { type Column, cheapest, type Row } from './linear-program.ts';
import { givesSolid, type Job, jobsOf, laidOut, type Pattern, type Rival, woodOf } from './rival.ts';

/** Rounds of pricing, and seconds that the exact solver has for the choice among all patterns. */
const mostRounds = 40;
const patience = 15;

/** Strips of one job in a blank: so many of this width. */
interface Share {
  readonly jobAt: number;
  readonly strips: number;
  readonly width: number;
}

interface Blank {
  readonly runAt: number;
  readonly length: number;
  readonly shares: readonly Share[];
}

/**
 * Column generation: patterns of a blank, priced by a knapsack over its width against what the linear program says
 * that each job is worth and each run's length costs; then the exact solver chooses among all patterns found.
 */
export const columnGeneration: Rival = {
  name: 'column generation with an exact choice among the patterns',
  async plan(asked) {
    const rack = rackOf(asked);
    const jobs = jobsOf(rack);
    const lengths = [...new Set(jobs.map(({ unit }) => unit.blankLength))];
    // A hair more than needed, for what the solver rounds.
    const rows: Row[] = [
      ...jobs.map(({ unit, need }): Row => ({ kind: 'least', limit: unit.part.panel ? need + 1e-4 : need })),
      ...rack.runs.map(({ length }): Row => ({ kind: 'most', limit: length + rack.shop.crosscutKerf })),
    ];
    const wood = rack.runs.reduce((sum, run, runAt) => sum + woodOf(rack, runAt, run.length), 0);
    const missing = jobs.map(({ need }, row): Column => ({ cost: wood / need, puts: [{ row, much: 1 }] }));
    const blanks: Blank[] = [];
    const known = new Set<string>();
    const columns: Column[] = [...missing];
    const add = (blank: Blank): boolean => {
      const key = JSON.stringify(blank);
      if (known.has(key)) return false;
      known.add(key);
      blanks.push(blank);
      columns.push(columnOf(rack, jobs, blank));
      return true;
    };
    for (let round = 0; round < mostRounds; round++) {
      const relaxed = round === 0 ? undefined : await cheapest(columns, rows, false, patience);
      // Before there is a program to ask, every job is worth its face.
      const worth = jobs.map(
        ({ unit }, at) => relaxed?.duals[at] ?? 1.2 * (unit.part.panel ? 1 : unit.need) * unit.blankLength,
      );
      let more = false;
      for (const runAt of rack.runs.keys()) {
        const metre = Math.max(0, -(relaxed?.duals[jobs.length + runAt] ?? 0));
        for (const length of lengths) {
          const costs = woodOf(rack, runAt, length) + metre * (length + rack.shop.crosscutKerf);
          // At first each job by itself, then whatever is worth most together.
          const tried = relaxed ? [worth] : jobs.map((_, only) => worth.map((much, at) => (at === only ? much : 0)));
          for (const prices of tried) {
            const { value, shares } = bestBlank(rack, jobs, runAt, length, prices);
            if (shares.length > 0 && (!relaxed || value > costs * (1 + 1e-6)))
              more = add({ runAt, length, shares }) || more;
          }
        }
      }
      if (!more) break;
    }
    const chosen = await cheapest(columns, rows, true, patience);
    return chosen
      ? laidOut(asked, patternsOf(jobs, blanks, chosen.amounts.subarray(missing.length)))
      : greedy.plan(asked);
  },
};

function columnOf(rack: Rack, jobs: readonly Job[], { runAt, length, shares }: Blank): Column {
  const given = new Map<number, number>();
  for (const { jobAt, strips, width } of shares) {
    const gives = jobs[jobAt]?.unit.part.panel ? width - rack.shop.edgeAllowance : 1;
    given.set(jobAt, (given.get(jobAt) ?? 0) + strips * gives);
  }
  const puts = [...given].map(([row, much]) => ({ row, much }));
  puts.push({ row: jobs.length + runAt, much: length + rack.shop.crosscutKerf });
  return { cost: woodOf(rack, runAt, length), puts };
}

/** What is worth most in one blank: solids and panel strips at their widest, and the rest of the width to one panel. */
function bestBlank(rack: Rack, jobs: readonly Job[], runAt: number, length: number, worth: readonly number[]) {
  const { shop } = rack;
  const run = rack.runs[runAt];
  const width = Math.floor((run?.width ?? 0) + shop.ripKerf);
  const items: { share: Share; takes: number; value: number; most: number }[] = [];
  const fillers: { jobAt: number; widest: number; value: number; most: number }[] = [];
  for (const [jobAt, { unit, need }] of jobs.entries()) {
    const price = worth[jobAt] ?? 0;
    if (!run || price <= 0 || unit.blankLength > length || !rack.maySupply(unit.partAt, run.boardAt)) continue;
    if (unit.part.panel) {
      const widest = widestStrip(shop, run.board, unit.part, length);
      if (widest < shop.minStrip) continue;
      fillers.push({ jobAt, widest, value: price, most: need * price });
      const gives = widest - shop.edgeAllowance;
      const most = Math.floor(need / gives);
      items.push({ share: { jobAt, strips: 1, width: widest }, takes: widest, value: price * gives, most });
    } else if (givesSolid(rack, unit, runAt, length))
      items.push({ share: { jobAt, strips: 1, width: unit.need }, takes: unit.need, value: price, most: need });
  }
  const value = new Float64Array(width + 1);
  const chosen: (readonly Share[])[] = Array.from({ length: width + 1 }, () => []);
  for (const { share, takes, value: each, most } of items) {
    const size = Math.ceil(takes + shop.ripKerf);
    for (let copy = 0; copy < most && (copy + 1) * size <= width; copy++)
      for (let at = width; at >= size; at--) {
        const sum = (value[at - size] ?? 0) + each;
        if (sum <= (value[at] ?? 0)) continue;
        value[at] = sum;
        chosen[at] = [...(chosen[at - size] ?? []), share];
      }
  }
  let best: { value: number; shares: readonly Share[] } = { value: value[width] ?? 0, shares: chosen[width] ?? [] };
  for (let used = 0; used <= width; used++)
    for (const { jobAt, widest, value: price, most } of fillers) {
      const shares = chosen[used] ?? [];
      const rest = (run?.width ?? 0) - shares.reduce((sum, share) => sum + share.width + shop.ripKerf, 0);
      const rips = fewestRips(shop, rest, widest);
      const sum = (value[used] ?? 0) + Math.min(most, rips.gives * price);
      if (rips.strips > 0 && sum > best.value)
        best = { value: sum, shares: [...shares, { jobAt, strips: rips.strips, width: rips.width }] };
    }
  return best;
}

function patternsOf(jobs: readonly Job[], blanks: readonly Blank[], amounts: Float64Array): Pattern[] {
  const made = jobs.map(() => 0);
  return blanks.flatMap(({ runAt, length, shares }, at) =>
    Array.from({ length: Math.round(amounts[at] ?? 0) }, () => {
      const strips = shares.flatMap(({ jobAt, strips: many, width }) =>
        Array.from({ length: many }, () => {
          const job = jobs[jobAt];
          const unit = job?.units[job.unit.part.panel ? 0 : (made[jobAt] ?? 0)];
          made[jobAt] = (made[jobAt] ?? 0) + 1;
          return unit;
        }).flatMap((unit) => (unit === undefined ? [] : [{ unit, width }])),
      );
      return { runAt, length, strips };
    }).filter(({ strips }) => strips.length > 0),
  );
}
