import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { usualPace } from '../../../src/core/gluing/pace.ts';
import { dryRunOf, nextLap } from '../../../src/screens/glue/dry-run-laps.ts';
import { hasLearnt, paceOf, withDryRun } from '../../../src/screens/glue/glue-pace.ts';

test('laps of the stopwatch, one after the other', () => {
  expect([[0], [0, 1], [0, 1, 2], [0, 1, 2, 3]].map(nextLap)).toEqual(['spread', 'close', 'clamp', undefined]);
  expect(dryRunOf([0, 90_000, 130_000, 190_000], { areaM2: 0.1, seams: 2, clamps: 6 })).toEqual({
    areaM2: 0.1,
    seams: 2,
    clamps: 6,
    spreadSeconds: 90,
    closeSeconds: 40,
    clampSeconds: 60,
  });
  // No clamps were set, and the clock was set back while closing.
  expect(dryRunOf([0, 90_000, 80_000, 190_000], { areaM2: 0.1, seams: 2, clamps: 0 })).toEqual({
    areaM2: 0.1,
    seams: 2,
    clamps: 0,
    spreadSeconds: 90,
  });
});

test('runs add up: the pace is all seconds over all that was done', () => {
  expect(paceOf({})).toEqual(usualPace);
  expect(hasLearnt({})).toBe(false);
  const first = withDryRun({ rip: { seconds: 5, count: 1 } }, { areaM2: 0.1, seams: 2, clamps: 5, spreadSeconds: 120 });
  if (isProblem(first)) throw new Error();
  const both = withDryRun(first, { areaM2: 0.3, seams: 4, clamps: 5, spreadSeconds: 480, clampSeconds: 50 });
  if (isProblem(both)) throw new Error();
  // 600 s over 0.4 m2, 50 s over 5 clamps; no seam was timed.
  expect(paceOf({ pace: both })).toEqual({ ...usualPace, secondsPerM2: 1500, secondsPerClamp: 10 });
  expect(hasLearnt({ pace: both })).toBe(true);
  expect(both.rip).toEqual({ seconds: 5, count: 1 });
});
