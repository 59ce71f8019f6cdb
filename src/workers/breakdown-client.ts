import type { PlanOptions } from '../core/breakdown/plan-breakdown.ts';
import type { BreakdownPlan, BreakdownProblem } from '../core/breakdown/problem-types.ts';
import type { WishCost } from '../core/breakdown/wish-cost.ts';
import type { BreakdownNews, BreakdownOrder, CostNews } from './breakdown.worker.ts';

const newWorker = () => new Worker(new URL('./breakdown.worker.ts', import.meta.url), { type: 'module' });

/**
 * Plans a breakdown off the main thread. `onNews` hears of better plans until one is finished.
 *
 * @param problem one that `checkProblem` let pass
 * @returns `stop` finishes early with the best plan so far; `drop` ends at once and tells nothing more
 */
export function startBreakdown(
  problem: BreakdownProblem,
  onNews: (news: BreakdownNews) => void,
  onFailure: (message: string) => void,
  options: PlanOptions = {},
): { stop: () => void; drop: () => void } {
  const worker = newWorker();
  const order = (message: BreakdownOrder) => worker.postMessage(message);
  worker.onmessage = ({ data }: MessageEvent<BreakdownNews>) => {
    if (data.finished) worker.terminate();
    onNews(data);
  };
  worker.onerror = ({ message }) => {
    worker.terminate();
    onFailure(message);
  };
  order({ kind: 'plan', problem, options });
  return { stop: () => order({ kind: 'stop' }), drop: () => worker.terminate() };
}

/** Finds what each wish of a plan costs, off the main thread. Returns how to give it up. */
export function startWishCosts(
  problem: BreakdownProblem,
  plan: BreakdownPlan,
  onCosts: (costs: readonly WishCost[]) => void,
): () => void {
  const worker = newWorker();
  worker.onmessage = ({ data }: MessageEvent<CostNews>) => {
    worker.terminate();
    onCosts(data.costs);
  };
  worker.postMessage({
    kind: 'costs',
    problem,
    plan: { blanks: plan.blanks, short: plan.short },
  } satisfies BreakdownOrder);
  return () => worker.terminate();
}
