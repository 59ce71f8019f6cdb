import { oneStep } from '../../core/answer/one-step.ts';
import { phrase } from '../../core/answer/phrase.ts';
import { count, wood } from '../../core/answer/quantity.ts';
import type { Working } from '../../core/answer/worked.ts';
import type { Plan } from '../../store/records/plan.ts';

const holds = phrase`As the boards are, not by the hardwood rule; without what goes back to the rack.`;

/** How the wood that goes into a plan is counted. */
export function consumedWorking({ blanks }: Pick<Plan, 'blanks'>, volume: number): Working {
  const by = phrase`board width × rough thickness × (blank length + crosscut kerf), of ${count(blanks.length)} blanks`;
  return oneStep('wood used', by, wood(volume), ['geometry'], holds).working;
}
