import { nextStep } from '../answer/next-step.ts';
import { phrase } from '../answer/phrase.ts';
import { type Outcome, problem, within } from '../answer/problem.ts';
import { boardFeet, count } from '../answer/quantity.ts';
import { sumOf } from '../answer/sum-of.ts';
import type { Worked, WorkingStep } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import type { Board } from './board.ts';
import { tallyWidth } from './board-width.ts';
import { checkBoard } from './check-board.ts';
import { countedInches } from './quarters.ts';
import { type HalfGoes, roundHalf } from './round-half.ts';
import { wholeFeet, widthInInches } from './tape-reading.ts';

/**
 * The tally of an export bundle: widths to the nearest whole inch, an exact half alternately up and down, lengths
 * between whole feet down; for each length the inches are added up; the sum of inches × feet ÷ 12 to the nearest whole
 * is the surface measure, and times the thickness the board feet.
 *
 * @param boards sizes in mm, all of one thickness by name, in the order they were tallied
 * @returns board feet; its working has a step for each length, shortest first, and the surface measure in square feet
 * @valid one bundle of rough hardwood. That only the bundle's total is rounded is common practice
 * @errors a bad board, as `boards.3.width`; more than one thickness
 * @example bundleTally([{ thickness: { quarters: 4 }, width: 133.35, length: 2590.8 }])
 *   // => { value: 3 }
 * @source AHEC guide to grading sawn lumber, measurement
 */
export function bundleTally(boards: readonly Board[]): Outcome<Worked> {
  const thickness = boards[0] ? countedInches(boards[0].thickness) : 1;
  /** Pieces and the sum of their whole inches, by length in feet. */
  const rows = new Map<number, { pieces: number; inches: number }>();
  let halfGoes: HalfGoes = 'up';
  for (const [index, board] of boards.entries()) {
    const [bad] = checkBoard(board);
    if (bad) return within(bad, `boards.${index}`);
    if (countedInches(board.thickness) !== thickness)
      return problem(`boards.${index}.thickness`, 'A bundle is of one thickness. Tally each by itself.');
    const width = roundHalf(widthInInches(tallyWidth(board)), halfGoes);
    halfGoes = width.halfGoes;
    const feet = wholeFeet(board.length);
    const { pieces, inches } = rows.get(feet) ?? { pieces: 0, inches: 0 };
    rows.set(feet, { pieces: pieces + 1, inches: inches + width.whole });
  }
  const steps = [...rows]
    .sort(([a], [b]) => a - b)
    .map(
      ([feet, { pieces, inches }]): WorkingStep =>
        workingStep(
          `square feet of ${feet} ft boards`,
          phrase`${count(pieces)} boards, ${count(inches)} in together, × ${count(feet)} ft ÷ 12`,
          count((inches * feet) / 12),
        ),
    );
  const exact = sumOf(steps, ({ gives }) => gives.value);
  const surface = count(roundHalf(exact, 'up').whole);
  const measured: Worked = {
    value: surface.value,
    working: {
      steps: [...steps, workingStep('surface measure', phrase`to the nearest whole number`, surface)],
      holds: phrase`Rough hardwood of one thickness.`,
      sources: ['ahec', 'common-practice'],
    },
  };
  const by = phrase`surface measure × thickness ${count(thickness)} in`;
  return nextStep(measured, 'board feet', by, boardFeet(surface.value * thickness));
}
