import { isProblem } from '../../core/answer/problem.ts';
import type { Working } from '../../core/answer/worked.ts';
import { temperatureCorrection } from '../../core/moisture/temperature-correction.ts';
import type { Board, MoistureReading } from '../../store/records/board.ts';

export interface CorrectedReading {
  readonly at: number;
  readonly percent: number;
  /** How it was corrected. */
  readonly working?: Working;
}

/** A reading corrected for the temperature of the wood, where that was noted and the rule holds. */
function correctedReading({ at, percent, celsius }: MoistureReading): CorrectedReading {
  const found = celsius === undefined ? undefined : temperatureCorrection({ percent, celsius });
  return found === undefined || isProblem(found)
    ? { at, percent }
    : { at, percent: found.value, working: found.working };
}

/** Readings in order of time, corrected. */
export const correctedReadings = ({ readings = [] }: Pick<Board, 'readings'>): CorrectedReading[] =>
  readings.map(correctedReading).sort((a, b) => a.at - b.at);

export const latestReading = (board: Board): CorrectedReading | undefined => correctedReadings(board).at(-1);
