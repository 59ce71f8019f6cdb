import { phrase } from '../../core/answer/phrase.ts';
import { count, m2 } from '../../core/answer/quantity.ts';
import type { Working } from '../../core/answer/worked.ts';
import type { Plan } from '../../store/records/plan.ts';

/** How the board that goes into a plan is counted. */
export const consumedWorking = ({ blanks }: Pick<Plan, 'blanks'>, consumed: number): Working => ({
  steps: [
    {
      finds: 'board used',
      by: phrase('board width × (blank length + crosscut kerf), of {blanks} blanks', {
        blanks: count(blanks.length),
      }),
      gives: m2(consumed),
    },
  ],
  holds: phrase('By area of the face, without what goes back to the rack.'),
  sources: ['geometry'],
});
