import type { Phrase } from '../../core/answer/phrase.ts';
import { isProblem, type Problem } from '../../core/answer/problem.ts';
import type { MillingStep } from '../../core/milling/milling-step.ts';
import { type Measured, withMeasured } from '../../core/milling/with-measured.ts';

/** A reading, and what followed from it; or why it no longer fits. */
export interface FollowedReading {
  readonly reading: Measured;
  readonly notes: readonly Phrase[];
  readonly problem?: Problem;
}

/** The steps as they stand after what was measured. A reading that doesn't fit is passed over and says why. */
export function followReadings(
  steps: readonly MillingStep[],
  measured: readonly Measured[],
): { readonly steps: readonly MillingStep[]; readonly readings: readonly FollowedReading[] } {
  const readings: FollowedReading[] = [];
  let now = steps;
  for (const reading of measured) {
    const followed = withMeasured(now, reading);
    if (isProblem(followed)) readings.push({ reading, notes: [], problem: followed });
    else {
      now = followed.steps;
      readings.push({ reading, notes: followed.notes });
    }
  }
  return { steps: now, readings };
}
