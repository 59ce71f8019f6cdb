import { isProblem } from '../../src/core/answer/problem.ts';
import { bestPlan } from '../../src/core/breakdown/plan-breakdown.ts';
import type { BreakdownProblem } from '../../src/core/breakdown/problem-types.ts';
import { solveUnshared } from '../core/breakdown/exact-model.ts';
import { independentCheck } from '../core/breakdown/independent-check.ts';
import openProblems from '../core/breakdown/open-problems.json' with { type: 'json' };
import { randomProblem } from '../core/breakdown/random-problem.ts';
import type { BenchRow } from './bench-row.ts';
import { type Beaten, rivalRows } from './breakdown-rivals.ts';

/** Seconds after which the exact solver is stopped. */
const patience = 15;

/** Boards up to which the exact solver is asked too: beyond, it would run into its limit. */
const exactUpTo = 10;

/** Plans the open problems and random ones of 20 and 60 boards: wood against the reference and other ways to plan, time against the bar and the exact solver. */
export async function bench(): Promise<BenchRow[]> {
  const rows: BenchRow[] = [...timed(20, 250), ...timed(60, 1000)];
  const ratios: number[] = [];
  const beaten: Beaten[] = [];
  for (const asked of openProblems) {
    const { area, milliseconds, flaws } = measure(asked);
    const ratio = area / asked.reference.area;
    ratios.push(ratio);
    beaten.push({ asked, ours: area });
    const exact = asked.boards.length <= exactUpTo ? await exactTime(asked, milliseconds) : '';
    rows.push({
      what: `breakdown ${asked.name}, ${asked.boards.length} boards: wood against the reference`,
      measured: `${ratio.toFixed(4)}, ${milliseconds.toFixed(0)} ms of processor${exact}`,
      bar: 'at most 1.03, no rule broken, nothing short',
      holds: ratio <= 1.03 && flaws === 0,
    });
  }
  const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
  rows.push({
    what: 'breakdown: wood on average',
    measured: mean.toFixed(4),
    bar: 'at most 1.01',
    holds: mean <= 1.01,
  });
  return [...rows, ...(await rivalRows(beaten))];
}

function measure(asked: BreakdownProblem) {
  const before = process.cpuUsage();
  const plan = bestPlan(asked);
  const { user, system } = process.cpuUsage(before);
  if (isProblem(plan)) throw new Error(plan.message.text);
  const { area, breaches, short } = independentCheck(asked, plan);
  return { area, flaws: breaches.length + short, milliseconds: (user + system) / 1000 };
}

async function exactTime(asked: BreakdownProblem, milliseconds: number): Promise<string> {
  const before = performance.now();
  const { status } = await solveUnshared(asked, patience);
  const taken = performance.now() - before;
  return `; the exact solver: ${taken.toFixed(0)} ms (${status}), ${(taken / milliseconds).toFixed(1)} times as long`;
}

/** The longest of five random problems with so many boards, with about twice the wood that the parts need, and nothing short. */
function timed(boards: number, bar: number): BenchRow[] {
  const taken = Array.from({ length: 5 }, (_, seed) => {
    const asked = randomProblem(seed + 1, Math.round(boards / 2), 3);
    return measure({ ...asked, boards: asked.boards.slice(0, boards) });
  });
  const longest = Math.max(...taken.map(({ milliseconds }) => milliseconds));
  const flawless = taken.every(({ flaws }) => flaws === 0);
  return [
    {
      what: `breakdown of ${boards} boards, the longest of five, the first of all included`,
      measured: `${longest.toFixed(0)} ms of processor`,
      bar: `at most ${bar} ms, no rule broken, nothing short`,
      holds: longest <= bar && flawless,
    },
  ];
}
