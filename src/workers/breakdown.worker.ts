import { type PlanOptions, type PlanProgress, planBreakdown } from '../core/breakdown/plan-breakdown.ts';
import type { BreakdownPlan, BreakdownProblem } from '../core/breakdown/problem-types.ts';
import { type WishCost, wishCosts } from '../core/breakdown/wish-cost.ts';

/** What the worker is asked; its problems are ones that `checkProblem` let pass. */
export type BreakdownOrder =
  | { readonly kind: 'plan'; readonly problem: BreakdownProblem; readonly options: PlanOptions }
  | { readonly kind: 'stop' }
  | { readonly kind: 'costs'; readonly problem: BreakdownProblem; readonly plan: BreakdownPlan };

/** Better and better plans; after one that is `finished` the worker has nothing more to say. */
export interface BreakdownNews extends PlanProgress {
  readonly finished: boolean;
}

/** The answer to `costs`. */
export interface CostNews {
  readonly costs: readonly WishCost[];
}

const tell = (news: BreakdownNews | CostNews) => postMessage(news);

let stopped = false;

/** How long the search runs before the worker looks for a stop and tells how far it is. */
const sliceMilliseconds = 50;

async function plan(asked: BreakdownProblem, options: PlanOptions): Promise<void> {
  const plans = planBreakdown(asked, options);
  let last: PlanProgress = { plan: { blanks: [], short: [] }, done: 0 };
  while (!stopped) {
    const until = performance.now() + sliceMilliseconds;
    while (performance.now() < until) {
      const step = plans.next();
      if (step.done) return tell({ plan: step.value, done: 1, finished: true });
      last = step.value;
    }
    tell({ ...last, finished: false });
    await new Promise((resolve) => setTimeout(resolve));
  }
  tell({ ...last, finished: true });
}

addEventListener('message', ({ data }: MessageEvent<BreakdownOrder>) => {
  if (data.kind === 'stop') stopped = true;
  else if (data.kind === 'costs') tell({ costs: wishCosts(data.problem, data.plan) });
  else void plan(data.problem, data.options);
});
