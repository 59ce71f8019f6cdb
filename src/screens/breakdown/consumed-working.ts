import { phrase } from '../../core/answer/phrase.ts';
import { count, m2 } from '../../core/answer/quantity.ts';
import type { Working } from '../../core/answer/worked.ts';
import type { Plan } from '../../store/records/plan.ts';

/** How the board that goes into a plan is counted. */
export const consumedWorking = ({ blanks }: Pick<Plan, 'blanks'>, consumed: number): Working => ({
  steps: [
    {
      finds: 'board that goes into the parts',
      by: phrase('width of the board × (length of the blank + kerf of its crosscut), of {blanks} blanks', {
        blanks: count(blanks.length),
      }),
      gives: m2(consumed),
    },
  ],
  holds: phrase('By area of the face. What stays longer than the last blank goes back to the rack and is not counted.'),
  sources: ['geometry'],
});
