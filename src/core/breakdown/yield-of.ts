import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import { m2, percent } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';

/**
 * How much of the wood that was crosscut from boards is in finished faces.
 *
 * @param finished area of the finished faces, m2
 * @param consumed area crosscut from boards, kerf included, m2
 * @returns percent; 0 where nothing was cut
 * @valid areas of the face; thickness is not asked
 * @example yieldOf(0.9, 1.2) // => { value: 75 }
 * @source geometry
 */
export const yieldOf = (finished: number, consumed: number): Worked =>
  oneStep(
    'yield',
    phrase`finished ${m2(finished)} ÷ consumed ${m2(consumed)}`,
    percent(consumed > 0 ? (100 * finished) / consumed : 0),
    ['geometry'],
    phrase`By area of the face, without what goes back to the rack.`,
  );
