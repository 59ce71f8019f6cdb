import { nextStep } from '../answer/next-step.ts';
import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome } from '../answer/problem.ts';
import { boardFeet, count } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import type { Board } from './board.ts';
import { countedInches, nominalQuarters } from './quarters.ts';
import type { HalfGoes } from './round-half.ts';
import { surfaceMeasure } from './surface-measure.ts';

/**
 * Board feet by the hardwood rule: surface measure times the rough thickness in inches, below 1 in counted as 1 in.
 *
 * @param board sizes in mm; a measured thickness counts as the whole quarters it is full of
 * @param halfGoes where an exact half of the surface measure goes
 * @returns board feet
 * @valid rough hardwood
 * @errors those of `checkBoard`
 * @example boardFeetByRule({ thickness: { quarters: 8 }, width: 158.75, length: 2438.4 }) // => { value: 8 }
 * @source NHLA; AHEC guide, measurement
 */
export function boardFeetByRule(board: Board, halfGoes: HalfGoes = 'up'): Outcome<Worked> {
  const surface = surfaceMeasure(board, halfGoes);
  if (isProblem(surface)) return surface;
  const inches = countedInches(board.thickness);
  const counted = nominalQuarters(board.thickness) < 4 ? ' (below 1 in counts as 1 in)' : '';
  const by = phrase`surface measure ${count(surface.value)} × thickness ${count(inches)} in${counted}`;
  return nextStep(surface, 'board feet', by, boardFeet(surface.value * inches));
}
