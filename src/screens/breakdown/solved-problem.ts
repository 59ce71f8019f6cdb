import type { BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import type { Plan } from '../../store/records/plan.ts';

/** The problem as it was when the plan was made. */
export const solvedProblem = (plan: Pick<Plan, 'problem'>): BreakdownProblem =>
  plan.problem as unknown as BreakdownProblem;
