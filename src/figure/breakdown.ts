import { isProblem, type Outcome } from '../core/answer/problem.ts';
import { bestPlan } from '../core/breakdown/plan-breakdown.ts';
import { planTotals } from '../core/breakdown/plan-totals.ts';
import { shortages } from '../core/breakdown/shortages.ts';
import type { Figure } from './ask.ts';
import { readBreakdown } from './breakdown-input.ts';

/** A plan for a breakdown problem, with what it consumes and how long it took. */
export const figure: Figure = (input: unknown): Outcome<object> => {
  const asked = readBreakdown(input);
  if (isProblem(asked)) return asked;
  const before = performance.now();
  const plan = bestPlan(asked);
  const milliseconds = performance.now() - before;
  if (isProblem(plan)) return plan;
  const { consumed, strips, boards, yield: share } = planTotals(asked, plan);
  const buy = shortages(asked, plan).flatMap(({ buy }) => (buy ? [buy] : []));
  return { ...plan, milliseconds, consumed, strips, boards, yield: share.value, ...(buy.length > 0 && { buy }) };
};
