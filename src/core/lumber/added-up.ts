import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import { boardFeet, count, m3, type Quantity } from '../answer/quantity.ts';
import type { SourceId } from '../answer/source-id.ts';
import { m3PerBoardFoot } from '../answer/us-units.ts';
import type { Worked } from '../answer/worked.ts';

/** What one board holds. */
export interface BoardFigures {
  /** Whole square feet. */
  readonly surfaceMeasure: number;
  /** By the rule. */
  readonly boardFeet: number;
  readonly cubicMetres: number;
}

export interface Sums {
  /** Whole square feet, all boards. */
  readonly surfaceMeasure: Worked;
  readonly boardFeet: Worked;
  readonly exactBoardFeet: Worked;
  readonly cubicMetres: Worked;
}

/**
 * What boards hold together.
 *
 * @param boards the figures of each: square feet, board feet by the rule, cubic metres
 * @returns the sums, also in exact board feet; 0 for no boards
 * @valid any boards
 * @example addedUp([8, 6].map((boardFeet) => ({ surfaceMeasure: 4, boardFeet, cubicMetres: 0.02 }))).boardFeet
 *   // => { value: 14 }
 * @source NHLA; board foot from NIST SP 811
 */
export function addedUp(boards: readonly BoardFigures[]): Sums {
  const sum = (
    finds: string,
    figure: keyof BoardFigures,
    unit: (value: number) => Quantity,
    sources: readonly SourceId[],
    per = 1,
  ): Worked => {
    const value = boards.reduce((total, board) => total + board[figure], 0) / per;
    const by = phrase`${count(boards.length)} boards added up`;
    return oneStep(finds, by, unit(value), sources);
  };
  const exact: readonly SourceId[] = ['geometry', 'nist-sp811'];
  return {
    surfaceMeasure: sum('surface measure', 'surfaceMeasure', count, ['nhla']),
    boardFeet: sum('board feet', 'boardFeet', boardFeet, ['nhla']),
    exactBoardFeet: sum('exact board feet', 'cubicMetres', boardFeet, exact, m3PerBoardFoot),
    cubicMetres: sum('volume', 'cubicMetres', m3, ['geometry']),
  };
}
