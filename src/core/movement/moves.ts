import { badNumber } from '../answer/bad-number.ts';
import { joined } from '../answer/joined.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked, WorkingStep } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';

/** How far something shrinks and swells from today's size; mm, neither is negative. */
export interface Moves {
  readonly shrink: number;
  readonly swell: number;
}

/**
 * How far wood shrinks and swells over a part of its width: as far as that part goes.
 *
 * @param whole how far it moves over its width, mm
 * @param width mm
 * @param distance from where it is fixed, mm
 * @returns how far it moves over that distance, mm
 * @valid wood of one kind and cut all over
 * @errors a `Problem` on `distance` when it is no part of the width
 * @example movesOver(partMovement(cherry, 400, seasons), 400, 100).value // => { shrink: 0.5, swell: 0.74 }
 * @source geometry
 */
export function movesOver(whole: Worked<Moves>, width: number, distance: number): Outcome<Worked<Moves>> {
  const wrong = badNumber('distance', 'The distance', distance, 'mm', { above: 0, most: width });
  if (wrong) return wrong;
  const share = (finds: string, by: number): WorkingStep =>
    workingStep(finds, phrase`${mm(by)} × distance ${mm(distance)} ÷ ${mm(width)}`, mm((by * distance) / width));
  const { shrink, swell } = whole.value;
  const steps = [share('shrinking there', shrink), share('swelling there', swell)];
  return {
    value: { shrink: (shrink * distance) / width, swell: (swell * distance) / width },
    working: joined(whole.working, { steps, sources: ['geometry'] }),
  };
}
