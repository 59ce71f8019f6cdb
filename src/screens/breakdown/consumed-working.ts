import { oneStep } from '../../core/answer/one-step.ts';
import { phrase } from '../../core/answer/phrase.ts';
import { count, m2 } from '../../core/answer/quantity.ts';
import type { Working } from '../../core/answer/worked.ts';
import { byFace } from '../../core/breakdown/plan-totals.ts';
import type { Plan } from '../../store/records/plan.ts';

/** How the board that goes into a plan is counted. */
export function consumedWorking({ blanks }: Pick<Plan, 'blanks'>, consumed: number): Working {
  const by = phrase('board width × (blank length + crosscut kerf), of {blanks} blanks', {
    blanks: count(blanks.length),
  });
  return oneStep('board used', by, m2(consumed), ['geometry'], byFace).working;
}
