import { addedUp, type BoardFigures, type Sums } from './added-up.ts';
import type { Board } from './board.ts';
import { cubicMetresOf } from './exact-volume.ts';
import { countedInches } from './quarters.ts';
import { type HalfGoes, roundHalf } from './round-half.ts';
import { squareFeetOf } from './surface-measure.ts';

/**
 * The sums of `tally` alone, without each board's working: quick enough for the ten thousand boards of a rack.
 *
 * @param boards sizes in mm, in the order they were tallied; a board without a size is left out
 * @returns the sums; of 0 for no boards
 * @valid rough hardwood
 * @example quickTally([board]) // => { boardFeet: { value: 8 }, cubicMetres: { value: 0.01966 } }
 * @source as of `tally`
 */
export function quickTally(boards: readonly Board[]): Sums {
  const figures: BoardFigures[] = [];
  let halfGoes: HalfGoes = 'up';
  for (const board of boards) {
    const cubicMetres = cubicMetresOf(board);
    if (!(cubicMetres > 0)) continue;
    const surface = roundHalf(squareFeetOf(board), halfGoes);
    halfGoes = surface.halfGoes;
    figures.push({
      surfaceMeasure: surface.whole,
      boardFeet: surface.whole * countedInches(board.thickness),
      cubicMetres,
    });
  }
  return addedUp(figures);
}
