import fc from 'fast-check';
import { det, multiply } from 'mathjs';
import { expect, it } from 'vitest';
import { minors, solve } from '../../../src/core/square/linear.ts';

const matrix = fc.integer({ min: 1, max: 5 }).chain((n) =>
  fc.array(fc.array(fc.integer({ min: -20, max: 20 }), { minLength: n, maxLength: n }), {
    minLength: n,
    maxLength: n,
  }),
);

it('finds the determinants that a matrix library finds', () => {
  // Outside: mathjs `det`. Whole entries up to 20 and size 5 give at most 4e8; 1e-5 is rounding with room.
  fc.assert(
    fc.property(matrix, (rows) => {
      expect(Math.abs((minors(rows).at(-1) ?? Number.NaN) - det(rows))).toBeLessThan(1e-5);
    }),
  );
});

it('solves what multiplies back, and says when it cannot', () => {
  fc.assert(
    fc.property(matrix, fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 5, maxLength: 5 }), (rows, all) => {
      const right = all.slice(0, rows.length);
      fc.pre(Math.abs(det(rows)) > 0.5);
      const x = solve(rows, right) ?? [];
      // Outside: mathjs `multiply`. Condition numbers here stay below 1e8, rounding below 1e-6.
      (multiply(rows, x) as number[]).forEach((value, i) => {
        expect(value).toBeCloseTo(right[i] ?? Number.NaN, 6);
      });
    }),
  );
  expect(
    solve(
      [
        [1, 2],
        [2, 4],
      ],
      [1, 1],
    ),
  ).toBeUndefined();
});
