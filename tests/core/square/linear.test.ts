import fc from 'fast-check';
import { add, det, identity, multiply, transpose } from 'mathjs';
import { expect, it } from 'vitest';
import { minors, solve } from '../../../src/core/square/linear.ts';
import { outsideCases } from '../../setup/outside.ts';

const matrix = fc.integer({ min: 1, max: 5 }).chain((n) =>
  fc.array(fc.array(fc.integer({ min: -20, max: 20 }), { minLength: n, maxLength: n }), {
    minLength: n,
    maxLength: n,
  }),
);

it('finds the determinants that a matrix library finds', () => {
  // Whole entries up to 20 and size 5 give at most 4e8; 1e-5 is rounding with room.
  const same = outsideCases({
    what: 'determinants',
    source: 'mathjs',
    at: 'det',
    tolerance: 1e-5,
    cases: 'random matrices of whole numbers, up to 5 x 5',
  });
  fc.assert(
    fc.property(matrix, (rows) => {
      same(minors(rows).at(-1) ?? Number.NaN, det(rows));
    }),
  );
});

it('solves what multiplies back', () => {
  // Condition numbers here stay below 1e5, rounding below 1e-6.
  const same = outsideCases({
    what: 'normal equations solved, multiplied back',
    source: 'mathjs',
    at: 'multiply',
    tolerance: 5e-7,
    cases: 'random damped normal equations of whole numbers, up to 5 x 5',
  });
  fc.assert(
    fc.property(matrix, fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 5, maxLength: 5 }), (rows, all) => {
      const right = all.slice(0, rows.length);
      const normal = add(multiply(transpose(rows), rows), identity(rows.length)).valueOf() as number[][];
      same(multiply(normal, solve(normal, right)) as number[], right);
    }),
  );
});

it('gives nothing finite where it cannot', () => {
  const singular = [
    [1, 2],
    [2, 4],
  ];
  expect(solve(singular, [1, 1]).every(Number.isFinite)).toBe(false);
});
