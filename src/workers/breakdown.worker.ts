import { isProblem, type Problem } from '../core/answer/problem.ts';
import { checkProblem } from '../core/breakdown/check-problem.ts';
import { type PlanOptions, type PlanProgress, planBreakdown } from '../core/breakdown/plan-breakdown.ts';
import type { BreakdownPlan, BreakdownProblem } from '../core/breakdown/problem-types.ts';
import { type WishCost, wishCosts } from '../core/breakdown/wish-cost.ts';

export type BreakdownOrder =
  | { readonly kind: 'plan'; readonly problem: BreakdownProblem; readonly options: PlanOptions }
  | { readonly kind: 'stop' }
  | { readonly kind: 'costs'; readonly problem: BreakdownProblem; readonly plan: BreakdownPlan };

/** Better and better plans; after a `problem`, a plan that is `finished`, or a stop, the worker has nothing more to say. */
export type BreakdownNews = Problem | (PlanProgress & { readonly kind: 'plan'; readonly finished: boolean });

/** The answer to `costs`. */
export interface CostNews {
  readonly kind: 'costs';
  readonly costs: readonly WishCost[];
}

const tell = (news: BreakdownNews | CostNews) => postMessage(news);

let stopped = false;

/** How long the search runs before the worker looks for a stop and tells how far it is. */
const sliceMilliseconds = 50;

async function plan(asked: BreakdownProblem, options: PlanOptions): Promise<void> {
  const checked = checkProblem(asked);
  if (isProblem(checked)) return tell(checked);
  const plans = planBreakdown(checked, options);
  let last: PlanProgress = { plan: { blanks: [], short: [] }, done: 0 };
  while (!stopped) {
    const until = performance.now() + sliceMilliseconds;
    while (performance.now() < until) {
      const step = plans.next();
      if (step.done) return tell({ kind: 'plan', plan: step.value, done: 1, finished: true });
      last = step.value;
    }
    tell({ kind: 'plan', ...last, finished: false });
    await new Promise((resolve) => setTimeout(resolve));
  }
  tell({ kind: 'plan', ...last, finished: true });
}

function costs(asked: BreakdownProblem, held: BreakdownPlan): void {
  const found = wishCosts(asked, held);
  tell({ kind: 'costs', costs: isProblem(found) ? [] : found });
}

addEventListener('message', ({ data }: MessageEvent<BreakdownOrder>) => {
  if (data.kind === 'stop') stopped = true;
  else if (data.kind === 'costs') costs(data.problem, data.plan);
  else void plan(data.problem, data.options);
});
