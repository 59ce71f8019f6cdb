import { expect, test } from 'vitest';
import { usualPace } from '../../../src/core/gluing/pace.ts';
import { nextLap } from '../../../src/screens/glue/dry-run-laps.ts';
import { hasLearnt, paceOf, withDryRun } from '../../../src/screens/glue/glue-pace.ts';

test('laps of the stopwatch, one after the other', () => {
  expect([[0], [0, 1], [0, 1, 2], [0, 1, 2, 3]].map(nextLap)).toEqual(['spread', 'close', 'clamp', undefined]);
  expect(withDryRun(undefined, [0, 90_000, 130_000, 190_000], { spread: 0.1, close: 2, clamp: 6 })).toEqual({
    'glue-spread': { seconds: 90, count: 1000 },
    'glue-close': { seconds: 40, count: 2 },
    'glue-clamp': { seconds: 60, count: 6 },
  });
});

test('two at work do in a second what takes one of them two', () => {
  const laps = [0, 90_000, 130_000, 190_000];
  const pace = withDryRun(undefined, laps, { spread: 0.1, close: 2, clamp: 6 }, 2);
  expect(paceOf({ pace })).toEqual({ spread: 1800, close: 40, clamp: 20 });
});

test('no clamps set, a clock set back, a stopwatch forgotten overnight: such laps tell nothing', () => {
  const done = { spread: 0.1, close: 2, clamp: 0 };
  const spread = { 'glue-spread': { seconds: 90, count: 1000 } };
  expect(withDryRun({}, [0, 90_000, 80_000, 190_000], done)).toEqual(spread);
  expect(withDryRun({}, [0, 90_000, 90_000 + 86_401_000, 90_000_000], done)).toEqual(spread);
});

test('runs add up: the pace is all seconds over all that was done', () => {
  expect(paceOf({})).toEqual(usualPace);
  expect(hasLearnt({})).toBe(false);
  const first = withDryRun({ rip: { seconds: 5, count: 1 } }, [0, 120_000, 120_000, 120_000], {
    spread: 0.1,
    close: 2,
    clamp: 5,
  });
  const both = withDryRun(first, [0, 480_000, 480_000, 530_000], { spread: 0.3, close: 4, clamp: 5 });
  // 600 s over 0.4 m2, 50 s over 5 clamps; no seam was timed.
  expect(paceOf({ pace: both })).toEqual({ ...usualPace, spread: 1500, clamp: 10 });
  expect(hasLearnt({ pace: both })).toBe(true);
  expect(both.rip).toEqual({ seconds: 5, count: 1 });
});
