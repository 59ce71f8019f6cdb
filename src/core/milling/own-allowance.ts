import { phrase } from '../answer/phrase.ts';
import { count, mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';

/** Fewer measured strips than this say nothing about a habit. */
const enoughStrips = 5;

/**
 * What would have been allowance enough for nine strips of ten: the nearest-rank 90th percentile, to a tenth of a millimetre upward;
 * null with too few strips to tell.
 */
export function ownAllowance(taken: readonly number[], by: string): Worked | null {
  if (taken.length < enoughStrips) return null;
  const order = [...taken].sort((one, other) => one - other);
  const value = Math.ceil((order[Math.ceil(order.length * 0.9) - 1] as number) * 10 - 1e-6) / 10;
  return {
    value,
    working: {
      steps: [
        {
          finds: 'allowance',
          by: phrase(`${by}: enough for nine of ten of {strips} measured strips`, { strips: count(taken.length) }),
          gives: mm(value),
        },
      ],
      holds: phrase('From {least} measured strips on.', { least: count(enoughStrips) }),
      sources: ['assumption'],
    },
  };
}
