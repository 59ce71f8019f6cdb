import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { count } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import type { Board } from './board.ts';
import { tallyWidth } from './board-width.ts';
import { checkBoard } from './check-board.ts';
import { type HalfGoes, roundHalf } from './round-half.ts';
import { wholeFeet, widthInInches } from './tape-reading.ts';

export interface SurfaceMeasure extends Worked {
  /** Where the next exact half of the same tally goes. */
  readonly halfGoes: HalfGoes;
}

/** Square feet of a board's face as its tally takes them, before rounding: width in inches × whole feet ÷ 12. */
export const squareFeetOf = (board: Board): number => (widthInInches(tallyWidth(board)) * wholeFeet(board.length)) / 12;

/**
 * Surface measure by the hardwood rule: width in inches, fractions kept, times whole feet of length, over 12, to the
 * nearest whole square foot. Exact halves go alternately up and down through a tally.
 *
 * @param board sizes in mm; a tapered one is measured a third of its length from the narrow end
 * @param halfGoes where an exact half goes; pass on `halfGoes` of the board before
 * @returns square feet, a whole number, and where the next half goes
 * @valid rough boards of random width. Widths rounded to 0.1 mm and lengths rounded to 1 mm lose nothing by it
 * @errors those of `checkBoard`
 * @example surfaceMeasure({ thickness: { quarters: 8 }, width: 158.75, length: 2438.4 })
 *   // => { value: 4, halfGoes: 'up' }
 * @source NHLA, rules for the measurement and inspection of hardwood and cypress; AHEC guide, measurement. That exact
 *   halves alternate, and the taper, from memory
 */
export function surfaceMeasure(board: Board, halfGoes: HalfGoes = 'up'): Outcome<SurfaceMeasure> {
  const [bad] = checkBoard(board);
  if (bad) return bad;
  const inches = widthInInches(tallyWidth(board));
  const feet = wholeFeet(board.length);
  const exact = squareFeetOf(board);
  const rounded = roundHalf(exact, halfGoes);
  const isHalf = rounded.halfGoes !== halfGoes;
  // That halves alternate and where a taper is measured is recalled of the rule, the rest was read.
  const recalled = isHalf || board.farWidth !== undefined;
  return {
    value: rounded.whole,
    halfGoes: rounded.halfGoes,
    working: {
      steps: [
        workingStep(
          'square feet of face',
          phrase`width ${count(inches)} in × ${count(feet)} whole feet ÷ 12`,
          count(exact),
        ),
        workingStep(
          'surface measure',
          isHalf
            ? phrase`an exact half: this one goes ${halfGoes}, the next one the other way`
            : phrase`to the nearest whole number`,
          count(rounded.whole),
        ),
      ],
      holds: phrase`Rough boards; tapers measured a third from the narrow end.`,
      sources: recalled ? ['nhla', 'nhla-memory'] : ['nhla'],
    },
  };
}
