import { isProblem } from '../../core/answer/problem.ts';
import { temperatureCorrection } from '../../core/moisture/temperature-correction.ts';
import type { MoistureReading } from '../../store/records/board.ts';

/** A reading corrected for the temperature of the wood, where that was noted and the rule holds. */
export function correctedReading({ at, percent, celsius }: MoistureReading): { at: number; percent: number } {
  const corrected = celsius === undefined ? undefined : temperatureCorrection({ percent, celsius });
  return { at, percent: corrected === undefined || isProblem(corrected) ? percent : corrected.value };
}

/** Readings in order of time, corrected. */
export const correctedReadings = (readings: readonly MoistureReading[]): { at: number; percent: number }[] =>
  readings.map(correctedReading).sort((a, b) => a.at - b.at);
