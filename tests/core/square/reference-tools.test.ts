import fc from 'fast-check';
import { expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { straightedgeTest } from '../../../src/core/square/straightedge-test.ts';
import { trySquareTest } from '../../../src/core/square/try-square-test.ts';
import { windingSticks } from '../../../src/core/square/winding-sticks.ts';

it("gives a try square's own angle back from the lines it strikes", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 85, max: 95, noNaN: true }),
      fc.double({ min: 50, max: 900, noNaN: true }),
      (inside, length) => {
        // Stock to the left: the blade stands at `inside` from the edge's left half, so its end lies `lean` to the right.
        const lean = length * Math.tan(((inside - 90) * Math.PI) / 180);
        const found = trySquareTest(lean - -lean, length);
        if (isProblem(found)) throw new Error(found.field);
        expect(found.value.inside).toBeCloseTo(inside, 9);
        expect(found.value.perMetre).toBeCloseTo((lean / length) * 1000, 9);
      },
    ),
  );
  // Half of 0.4 over 200 is 1 on a metre; atan 0.001 = 0.0573 degrees.
  expect(trySquareTest(0.4, 200)).toMatchObject({ value: { perMetre: 1, inside: expect.closeTo(90.0573, 4) } });
});

it('halves the gap of a flipped straightedge', () => {
  expect(straightedgeTest(0.6, 1000)).toMatchObject({ value: 0.3 });
  expect(straightedgeTest(-0.6, 1000)).toMatchObject({ value: -0.3 });
});

it("parts wind from the sticks' own error", () => {
  fc.assert(
    fc.property(fc.integer({ min: -10, max: 10 }), fc.integer({ min: -3, max: 3 }), (wind, sticks) => {
      // On sticks three times as long as the board is wide the gap is three times the wind.
      const found = windingSticks(3 * wind + sticks, 3 * wind - sticks, 600, 200);
      if (isProblem(found)) throw new Error(found.field);
      expect(found.value.wind).toBeCloseTo(wind, 9);
      expect(found.value.sticks).toBeCloseTo(sticks, 9);
    }),
  );
  expect(windingSticks(3, null, 600, 200)).toMatchObject({ value: { wind: 1, sticks: null } });
});

it.each([
  [trySquareTest(0.1, 0), 'length'],
  [trySquareTest(100, 200), 'gap'],
  [trySquareTest(Number.NaN, 200), 'gap'],
  [straightedgeTest(0.1, -5), 'length'],
  [straightedgeTest(50, 1000), 'gap'],
  [windingSticks(1, null, 0, 200), 'length'],
  [windingSticks(1, null, 600, 700), 'width'],
  [windingSticks(90, null, 600, 200), 'gap'],
  [windingSticks(1, Number.NaN, 600, 200), 'swapped'],
])('refuses impossible readings %#', (found, field) => {
  expect(found).toMatchObject({ kind: 'problem', field });
});
