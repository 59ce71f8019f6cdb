import { phrase } from '../answer/phrase.ts';
import { type Outcome, problem, within } from '../answer/problem.ts';
import { boardFeet, count } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import type { Board } from './board.ts';
import { tallyWidth } from './board-width.ts';
import { checkBoard } from './check-board.ts';
import { countedInches } from './quarters.ts';
import { type HalfGoes, roundHalf } from './round-half.ts';
import { wholeFeet, widthInInches } from './tape-reading.ts';

export interface BundleRow {
  readonly lengthFeet: number;
  readonly pieces: number;
  /** Sum of the whole widths, inches. */
  readonly inches: number;
}

export interface BundleTally {
  /** Each board as it is tallied, in the order of the boards. */
  readonly boards: readonly { readonly widthInches: number; readonly lengthFeet: number }[];
  /** One row for each length, shortest first. */
  readonly rows: readonly BundleRow[];
  /** Whole square feet. */
  readonly surfaceMeasure: number;
  readonly boardFeet: Worked;
}

/**
 * The tally of an export bundle: widths to the nearest whole inch, an exact half alternately up and down, lengths
 * between whole feet down; for each length the inches are added up; the sum of inches × feet ÷ 12 to the nearest whole
 * is the surface measure, and times the thickness the board feet.
 *
 * @param boards sizes in mm, all of one thickness by name, in the order they were tallied
 * @returns tallied widths and lengths, rows by length, surface measure in square feet, board feet
 * @valid one bundle of rough hardwood. That only the bundle's total is rounded is common practice
 * @errors a bad board, as `boards.3.width`; more than one thickness
 * @example bundleTally([{ thickness: { quarters: 4 }, width: 133.35, length: 2590.8 }])
 *   // => { boards: [{ widthInches: 5, lengthFeet: 8 }] }
 * @source AHEC guide to grading sawn lumber, measurement
 */
export function bundleTally(boards: readonly Board[]): Outcome<BundleTally> {
  const tallied: BundleTally['boards'][number][] = [];
  const inchesOfThickness = boards[0] ? countedInches(boards[0].thickness) : 1;
  let halfGoes: HalfGoes = 'up';
  for (const [index, board] of boards.entries()) {
    const [bad] = checkBoard(board);
    if (bad) return within(bad, `boards.${index}`);
    if (countedInches(board.thickness) !== inchesOfThickness)
      return problem(`boards.${index}.thickness`, 'A bundle is of one thickness. Tally each by itself.');
    const width = roundHalf(widthInInches(tallyWidth(board)), halfGoes);
    halfGoes = width.halfGoes;
    tallied.push({ widthInches: width.whole, lengthFeet: wholeFeet(board.length) });
  }
  const rows = rowsByLength(tallied);
  const exact = rows.reduce((sum, row) => sum + (row.inches * row.lengthFeet) / 12, 0);
  const surfaceMeasure = roundHalf(exact, 'up').whole;
  const value = surfaceMeasure * inchesOfThickness;
  return {
    boards: tallied,
    rows,
    surfaceMeasure,
    boardFeet: {
      value,
      working: {
        steps: [
          ...rows.map((row) => ({
            finds: `square feet of ${row.lengthFeet} ft boards`,
            by: phrase`${count(row.pieces)} boards, ${count(row.inches)} in together, × ${count(row.lengthFeet)} ft ÷ 12`,
            gives: count((row.inches * row.lengthFeet) / 12),
          })),
          {
            finds: 'surface measure',
            by: phrase`to the nearest whole number`,
            gives: count(surfaceMeasure),
          },
          {
            finds: 'board feet',
            by: phrase`surface measure × thickness ${count(inchesOfThickness)} in`,
            gives: boardFeet(value),
          },
        ],
        holds: phrase`Rough hardwood of one thickness.`,
        sources: ['ahec', 'common-practice'],
      },
    },
  };
}

function rowsByLength(boards: BundleTally['boards']): BundleRow[] {
  const rows = new Map<number, BundleRow>();
  for (const { lengthFeet, widthInches } of boards) {
    const { pieces, inches } = rows.get(lengthFeet) ?? { pieces: 0, inches: 0 };
    rows.set(lengthFeet, { lengthFeet, pieces: pieces + 1, inches: inches + widthInches });
  }
  return [...rows.values()].sort((a, b) => a.lengthFeet - b.lengthFeet);
}
