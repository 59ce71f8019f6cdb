import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import { count, boardFeet as inBoardFeet, m3, type Quantity } from '../answer/quantity.ts';
import type { SourceId } from '../answer/source-id.ts';
import { sumOf } from '../answer/sum-of.ts';
import type { Worked } from '../answer/worked.ts';
import type { Board } from './board.ts';
import { asBoardFeet, cubicMetresOf } from './exact-volume.ts';
import { countedInches } from './quarters.ts';
import { type HalfGoes, roundHalf } from './round-half.ts';
import { squareFeetOf } from './surface-measure.ts';

export interface TalliedBoard<B extends Board = Board> {
  readonly board: B;
  /** Where an exact half of this one went, for its working by `boardFeetByRule`. */
  readonly halfGoes: HalfGoes;
  /** Whole square feet. */
  readonly surfaceMeasure: number;
  /** By the rule. */
  readonly boardFeet: number;
  readonly cubicMetres: number;
}

/** What boards hold together. */
export interface Sums {
  readonly boardFeet: Worked;
  readonly exactBoardFeet: Worked;
  readonly cubicMetres: Worked;
}

export interface Tally<B extends Board = Board> extends Sums {
  /** In the order of the boards. */
  readonly boards: readonly TalliedBoard<B>[];
}

/**
 * A tally: surface measure and board feet by the hardwood rule, and the exact volume; quick enough for the ten thousand
 * boards of a rack. `boardFeetByRule` and `exactVolume` show the working of one board.
 *
 * @param boards sizes in mm, in the order they were tallied: exact halves go alternately up and down through them, the
 *   first one up; a board without a size is left out
 * @returns each board's figures (square feet, board feet, m3) and the sums; sums of 0 for no boards
 * @valid rough hardwood
 * @example tally([board])
 *   // => {
 *     boardFeet: { value: 8 },
 *     exactBoardFeet: { value: 8.333 },
 *     cubicMetres: { value: 0.01966 },
 *   }
 * @source NHLA; AHEC guide, measurement; board foot from NIST SP 811
 */
export function tally<B extends Board>(boards: readonly B[]): Tally<B> {
  const tallied: TalliedBoard<B>[] = [];
  let halfGoes: HalfGoes = 'up';
  for (const board of boards) {
    const cubicMetres = cubicMetresOf(board);
    if (!(cubicMetres > 0)) continue;
    const surface = roundHalf(squareFeetOf(board), halfGoes);
    const boardFeet = surface.whole * countedInches(board.thickness);
    tallied.push({ board, halfGoes, surfaceMeasure: surface.whole, boardFeet, cubicMetres });
    halfGoes = surface.halfGoes;
  }
  const sum = (
    finds: string,
    figure: 'boardFeet' | 'cubicMetres',
    unit: (value: number) => Quantity,
    source: SourceId,
  ) =>
    oneStep(finds, phrase`${count(tallied.length)} boards added up`, unit(sumOf(tallied, (board) => board[figure])), [
      source,
    ]);
  const cubicMetres = sum('volume', 'cubicMetres', m3, 'geometry');
  return {
    boards: tallied,
    boardFeet: sum('board feet', 'boardFeet', inBoardFeet, 'nhla'),
    exactBoardFeet: asBoardFeet(cubicMetres),
    cubicMetres,
  };
}
