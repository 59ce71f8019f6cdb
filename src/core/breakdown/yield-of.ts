import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import { m2, percent } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';

/** How much of the wood that was crosscut from boards, m2, is in finished faces, m2; in percent. */
export const yieldOf = (finished: number, consumed: number): Worked =>
  oneStep(
    'yield',
    phrase`finished ${m2(finished)} ÷ consumed ${m2(consumed)}`,
    percent(consumed > 0 ? (100 * finished) / consumed : 0),
    ['geometry'],
    phrase`By area of the face, without what goes back to the rack.`,
  );
