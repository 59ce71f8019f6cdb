import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { twistBySticks } from '../../../src/core/square/twist-by-sticks.ts';

const twist = (...given: Parameters<typeof twistBySticks>) => {
  const found = twistBySticks(...given);
  if (isProblem(found)) throw new Error(found.message.text);
  return found.value;
};

test('by hand: 3 seen over sticks of 600 that differ by 0.6, on a board 200 wide', () => {
  expect(twist(3, 200, { error: 0.6, length: 600 })).toBeCloseTo(1.2, 9);
  expect(twist(3, 200, { error: -0.6, length: 600 })).toBeCloseTo(1.2, 9);
  expect(twist(3, 200, { error: 0, length: 600 })).toBeCloseTo(1, 9);
});

test('whichever way the sticks lie, the board’s own twist is no more than said, and as much at the worst', () => {
  const size = fc.double({ min: -5, max: 5, noNaN: true });
  fc.assert(
    fc.property(size, size, fc.double({ min: 50, max: 600, noNaN: true }), (own, error, width) => {
      // Two lines over the board: they part by its own twist in proportion, and by the sticks' difference.
      const overSticks = (own * 600) / width;
      if (Math.abs(overSticks) + Math.abs(error) > 60) return;
      const said = [1, -1].map((way) => twist(Math.abs(overSticks + way * error), width, { error, length: 600 }));
      for (const one of said) expect(one).toBeGreaterThanOrEqual(Math.abs(own) - 1e-9);
      if (Math.abs(overSticks) >= Math.abs(error)) expect(Math.min(...said)).toBeCloseTo(Math.abs(own), 9);
    }),
  );
});

test.each<[string, Parameters<typeof twistBySticks>]>([
  ['width', [1, 601, { error: 0, length: 600 }]],
  ['seen', [61, 200, { error: 0, length: 600 }]],
  ['length', [1, 200, { error: 0, length: 0 }]],
])('what can’t be is refused at %s', (field, given) => {
  expect(twistBySticks(...given)).toMatchObject({ kind: 'problem', field });
});
