import { phrase } from '../answer/phrase.ts';
import { count, degrees, mm } from '../answer/quantity.ts';
import type { Working, WorkingStep } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import type { Measured } from './measured.ts';
import { usedPrecision } from './precision.ts';
import { type LineName, measuredNames } from './readings.ts';
import type { Squareness } from './squareness.ts';
import { stickDifference } from './stick-difference.ts';

function fitSteps(
  { closing, corners, slide }: Omit<Squareness, 'say'>,
  sides: Readonly<Record<LineName, number>>,
  measured: Measured,
): WorkingStep[] {
  const steps: WorkingStep[] = [];
  if (closing.spare > 0)
    steps.push(
      workingStep(
        'closing error',
        phrase`left over by the nearest shape through ${count(measuredNames(measured.readings).length)} readings`,
        mm(closing.closing),
      ),
    );
  for (const { corner, by, end, angle, value } of [
    { corner: 'C', by: 'right end', end: sides.right, angle: corners.B, value: slide.C },
    { corner: 'D', by: 'left end', end: sides.left, angle: corners.A, value: slide.D },
  ]) {
    if (angle === null || value === null) continue;
    steps.push(
      workingStep(
        `slide of ${corner}`,
        phrase`${by} ${mm(end)} x cosine of ${degrees(angle)}, along the back edge`,
        mm(value),
      ),
    );
  }
  return steps;
}

/** The steps behind a squareness: by the diagonals' difference when that is what was measured, else by the fitted shape. */
export function squarenessWorking(
  found: Omit<Squareness, 'say'>,
  sides: Readonly<Record<LineName, number>>,
  measured: Measured,
  precision: number,
): Working {
  const {
    front = 0,
    left = 0,
    diagonalAC = 0,
    diagonalBD = 0,
    difference = diagonalAC - diagonalBD,
  } = measured.readings;
  const stick = measured.farEnd && stickDifference(front, left, difference, measured.farEnd).working;
  const steps = [...(stick?.steps ?? []), ...fitSteps(found, sides, measured)];
  if (found.detectable !== null)
    steps.push(
      workingStep(
        'least lean that shows',
        phrase`a smaller lean hides in readings ${mm(usedPrecision(precision))} off`,
        mm(found.detectable),
      ),
    );
  return {
    steps,
    holds: stick?.holds ?? phrase`Straight edges, the front edge the reference; pieces of ${mm(50)} to ${mm(6000)}.`,
    sources: ['geometry'],
  };
}
