import { isProblem, type Outcome } from '../answer/problem.ts';
import { checkProblem } from './check-problem.ts';
import { draftOf } from './draft-of-plan.ts';
import type { BreakdownPlan, BreakdownProblem } from './problem-types.ts';
import { rackOf } from './rack.ts';
import { search } from './search.ts';
import { settle } from './settle.ts';
import { takeWhatThereIs } from './take-what-there-is.ts';
import { weightsOf } from './weights.ts';

export interface PlanProgress {
  /** The best plan so far; the same object until a better one is found. */
  readonly plan: BreakdownPlan;
  /** Share of the work that is done, 0 to 1. */
  readonly done: number;
}

export interface PlanOptions {
  /** How hard to look: 1 is a moment on a phone, 10 ten times that. */
  readonly effort?: number;
  /** A plan to do better than; what comes out is never worse by wood and shortage. */
  readonly startFrom?: BreakdownPlan;
}

/**
 * Plans which blanks are crosscut from which board and how each is ripped: better and better plans, one at a time.
 *
 * The effort is counted in choices weighed, not in time: the same question gets the same answer on every machine.
 * Stop by no longer asking for the next; the plan of the last progress is whole and valid.
 *
 * @param asked a problem that `checkProblem` let pass, mm
 * @param options effort, and a plan to start from
 * @returns progress many times a second, and at the end the best plan
 * @valid any such problem. A heuristic: measured against an exact model by `npm run bench`. Units that it finds no way
 *   to make are named in the plan's `short`
 * @example lastPlan(oneRail)
 *   // => { blanks: [{ board: 'B1', start: 0, length: 400, strips: [{ width: 100, part: 'rail', unit: 1 }] }], short: [] }
 * @source large-neighbourhood search (Shaw 1998, from memory) over a knapsack cover per panel
 */
export function* planBreakdown(
  asked: BreakdownProblem,
  options: PlanOptions = {},
): Generator<PlanProgress, BreakdownPlan> {
  const rack = rackOf(asked);
  const start = options.startFrom && draftOf(rack, options.startFrom);
  const attempts = search(rack, weightsOf(asked), workFor(asked) * (options.effort ?? 1), start);
  let draft: unknown;
  let plan: BreakdownPlan = { blanks: [], short: [] };
  let attempt = attempts.next();
  while (!attempt.done) {
    if (attempt.value.draft !== draft) {
      draft = attempt.value.draft;
      plan = settle(takeWhatThereIs(attempt.value.draft));
    }
    yield { plan, done: attempt.value.done };
    attempt = attempts.next();
  }
  return settle(takeWhatThereIs(attempt.value));
}

/** The plan that `planBreakdown` ends with, for a problem that `checkProblem` let pass. */
export function lastPlan(asked: BreakdownProblem, options: PlanOptions = {}): BreakdownPlan {
  const plans = planBreakdown(asked, options);
  let step = plans.next();
  while (!step.done) step = plans.next();
  return step.value;
}

/**
 * The best plan for a problem that may be anything, as `planBreakdown` ends with it.
 *
 * @param asked shop, boards and parts, mm
 * @param options as of `planBreakdown`
 * @returns blanks with their strips, and what is short, mm
 * @valid as `planBreakdown`
 * @errors those of `checkProblem`
 * @example bestPlan({ ...oneRail, boards: [] }) // => { field: 'boards' }
 * @source as of `planBreakdown`
 */
export function bestPlan(asked: BreakdownProblem, options: PlanOptions = {}): Outcome<BreakdownPlan> {
  const checked = checkProblem(asked);
  return isProblem(checked) ? checked : lastPlan(checked, options);
}

/** Choices to weigh: well under a quarter of a second for a score of boards, under half a second for three score. */
function workFor({ boards }: BreakdownProblem): number {
  const counted = Math.min(boards.length, 100);
  return 2_400_000 + 30_000 * counted + 2_000 * counted ** 2;
}
