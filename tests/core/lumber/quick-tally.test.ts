import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { quickTally } from '../../../src/core/lumber/quick-tally.ts';
import { tally } from '../../../src/core/lumber/tally.ts';
import { outside } from '../../setup/outside.ts';
import { anyBoard, board } from './boards.ts';

test('the sums are those of the tally with its workings, to the last bit', () => {
  fc.assert(
    fc.property(fc.array(anyBoard, { maxLength: 40 }), (boards) => {
      const whole = tally(boards);
      if (isProblem(whole)) throw new Error('any board can be tallied');
      const { boards: _, ...sums } = whole;
      expect(quickTally(boards)).toEqual(sums);
    }),
  );
});

test('exact halves go up and down in turn', () => {
  const boards = Array.from({ length: 1200 }, () => board(4, 6, 9));
  outside({
    what: '1200 boards of 6 in by 9 ft, each an exact half at 4.5 sq ft: board feet',
    source: 'nhla-memory',
    at: 'halves go up and down in turn',
    expected: 1200 * 4.5,
    got: quickTally(boards).boardFeet.value,
  });
  expect(quickTally(boards.slice(0, 3)).surfaceMeasure.value).toBe(5 + 4 + 5);
});

test('a board without a size is left out, and not counted', () => {
  const { boardFeet } = quickTally([board(4, Number.NaN, 8), board(8, 6.25, 8)]);
  expect(boardFeet.value).toBe(8);
  expect(boardFeet.working.steps[0]?.by.quantities[0]?.value).toBe(1);
});
