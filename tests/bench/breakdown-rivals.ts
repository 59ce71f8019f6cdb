import type { BreakdownProblem } from '../../src/core/breakdown/problem-types.ts';
import { independentCheck } from '../core/breakdown/independent-check.ts';
import type { BenchRow } from './bench-row.ts';
import { boardByBoard } from './rivals/board-by-board.ts';
import { branchAndBound } from './rivals/branch-and-bound.ts';
import { columnGeneration } from './rivals/column-generation.ts';
import { greedy } from './rivals/greedy.ts';

/** An open problem, and the wood that the shipped search consumes for it, m2. */
export interface Beaten {
  readonly asked: BreakdownProblem & { readonly name: string; readonly reference: { readonly area: number } };
  readonly ours: number;
}

/** Milliseconds that a plan may take. */
const bar = ({ boards }: BreakdownProblem): number => (boards.length <= 20 ? 250 : 1000);

/** Other ways to plan the same problems: wood where nothing is short, time, and where they do better than the shipped search. */
export async function rivalRows(problems: readonly Beaten[]): Promise<BenchRow[]> {
  const rows: BenchRow[] = [];
  for (const { name, plan } of [greedy, boardByBoard, branchAndBound, columnGeneration]) {
    const ratios: number[] = [];
    const better: string[] = [];
    let [breaches, short, total, quickly] = [0, 0, 0, 0];
    for (const { asked, ours } of problems) {
      const before = process.cpuUsage();
      const found = independentCheck(asked, await plan(asked));
      const { user, system } = process.cpuUsage(before);
      const milliseconds = (user + system) / 1000;
      total += milliseconds;
      breaches += found.breaches.length;
      short += found.short;
      if (found.short > 0) continue;
      ratios.push(found.area / asked.reference.area);
      if (found.area > ours * (1 - 1e-4)) continue;
      better.push(`${asked.name} ${(found.area / ours).toFixed(4)} in ${milliseconds.toFixed(0)} ms`);
      if (milliseconds <= bar(asked)) quickly++;
    }
    const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
    const worst = Math.max(...ratios);
    rows.push({
      what: `breakdown by ${name}: wood against the reference, the ${problems.length} open problems`,
      measured: `${mean.toFixed(4)} on average, ${worst.toFixed(4)} at worst, ${short} pieces short, ${total.toFixed(0)} ms of processor in all; less wood than ours: ${better.join(', ') || 'nowhere'}`,
      bar: 'no rule broken; within the time that a plan may take, nowhere less wood than ours',
      holds: breaches === 0 && quickly === 0,
    });
  }
  return rows;
}
