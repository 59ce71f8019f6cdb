import type { Phrase } from '../answer/phrase.ts';
import { isProblem, type Problem } from '../answer/problem.ts';
import type { MillingStep } from './milling-step.ts';
import { type Measured, withMeasured } from './with-measured.ts';

/** A reading, and what followed from it; or why it no longer fits. */
export interface FollowedReading {
  readonly reading: Measured;
  readonly notes: readonly Phrase[];
  readonly problem?: Problem;
}

/**
 * The steps as they stand after all that was measured. A reading that doesn't fit is passed over and says why.
 *
 * @param steps as millingSequence made them
 * @param measured in the order they were taken, mm
 * @returns the steps that followed, every reading with what it moved, and the readings that count
 * @valid readings of one run
 * @example followReadings(millingSequence(oneShelf), []) // => { readings: [], counted: [] }
 * @source common practice
 */
export function followReadings(
  steps: readonly MillingStep[],
  measured: readonly Measured[],
): {
  readonly steps: readonly MillingStep[];
  readonly readings: readonly FollowedReading[];
  readonly counted: readonly Measured[];
} {
  const readings: FollowedReading[] = [];
  const counted: Measured[] = [];
  let now = steps;
  for (const reading of measured) {
    const followed = withMeasured(now, reading);
    if (isProblem(followed)) readings.push({ reading, notes: [], problem: followed });
    else {
      now = followed.steps;
      counted.push(reading);
      readings.push({ reading, notes: followed.notes });
    }
  }
  return { steps: now, readings, counted };
}
