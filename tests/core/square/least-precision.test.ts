import fc from 'fast-check';
import loadHighs from 'highs';
import { beforeAll, expect, it } from 'vitest';
import { leastLargest, leastPrecision } from '../../../src/core/square/least-precision.ts';
import { anyShape, parallelogram, rectangle } from '../../../src/core/square/shape-family.ts';
import { outsideCases } from '../../setup/outside.ts';
import { errors, precision, read, rectangleOf, size } from './random-pieces.ts';

let highs: Awaited<ReturnType<typeof loadHighs>>;
beforeAll(async () => {
  highs = await loadHighs();
});

/** Least t with every |target - rows x| at most t, as a linear program. */
function byProgram(rows: readonly (readonly number[])[], target: readonly number[]): number {
  const names = (rows[0] ?? []).map((_, k) => `x${k}`);
  const sum = (row: readonly number[]) =>
    row.map((value, k) => `${value < 0 ? '-' : '+'} ${Math.abs(value)} x${k}`).join(' ');
  const limits = rows.flatMap((row, i) => [
    ` u${i}: ${sum(row)} - t <= ${target[i]}`,
    ` l${i}: ${sum(row)} + t >= ${target[i]}`,
  ]);
  const text = [
    'Minimize',
    ' obj: t',
    'Subject To',
    ...limits,
    'Bounds',
    ...names.map((name) => ` ${name} free`),
    'End',
  ].join('\n');
  return highs.solve(text).ObjectiveValue;
}

it('finds the worst case that a linear program finds', () => {
  const entry = fc.integer({ min: -9, max: 9 });
  // The solver's own tolerance is 1e-7.
  const same = outsideCases({
    what: 'least largest miss of readings, against a linear program',
    source: 'highs',
    tolerance: 5e-6,
    cases: 'random systems of six readings',
  });
  fc.assert(
    fc.property(
      fc
        .integer({ min: 1, max: 4 })
        .chain((columns) =>
          fc.array(fc.array(entry, { minLength: columns, maxLength: columns }), { minLength: 6, maxLength: 6 }),
        ),
      fc.array(entry, { minLength: 6, maxLength: 6 }),
      (rows, target) => {
        const columns = rows[0]?.length ?? 0;
        // Only independent columns are promised: their first rows form a unit matrix.
        const independent = rows.map((row, i) => (i < columns ? row.map((_, k) => (i === k ? 1 : 0)) : row));
        same(leastLargest(independent, target), byProgram(independent, target));
      },
    ),
    { numRuns: 60 },
  );
});

it('never needs more than the errors that were made', () => {
  fc.assert(
    fc.property(size, size, errors, precision, (length, width, off, given) => {
      const reach = Math.min(given, length / 100, width / 100);
      const readings = read(rectangleOf(length, width), off, reach);
      const [any, leaning, square] = [anyShape, parallelogram, rectangle].map((family) =>
        leastPrecision(family, readings),
      );
      // The second order of an error of 1 percent of the piece: 2 percent of the error.
      expect(square).toBeLessThanOrEqual(reach * 1.02 + 1e-6);
      // A wider family never needs more.
      expect(leaning).toBeLessThanOrEqual((square ?? 0) * 1.02 + 1e-6);
      expect(any).toBeLessThanOrEqual((leaning ?? 0) * 1.02 + 1e-6);
    }),
  );
});

it('splits the difference of the diagonals of an even lean', () => {
  // Both diagonals 1969.77 in a rectangle; half of 1 each way.
  const sides = { front: 1800, right: 800, back: 1800, left: 800 };
  const needed = leastPrecision(rectangle, { ...sides, diagonalAC: 1970.27, diagonalBD: 1969.27 });
  expect(needed).toBeCloseTo(0.5, 6);
});
