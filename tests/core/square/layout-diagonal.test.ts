import { expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { layoutDiagonal } from '../../../src/core/square/layout-diagonal.ts';
import { wholeNumberTriangles } from '../../../src/core/square/whole-number-triangles.ts';
import { outside } from '../../setup/outside.ts';

// Euclid's triples: the primitive ones with a hypotenuse up to 41.
const euclid = [
  [3, 4, 5],
  [5, 12, 13],
  [8, 15, 17],
  [7, 24, 25],
  [20, 21, 29],
  [9, 40, 41],
] as const;

it.each(euclid)('aims for the third of %i, %i, %i', (a, b, c) => {
  const found = layoutDiagonal(a * 30, b * 30);
  outside({
    what: `diagonal of ${a * 30} by ${b * 30}, mm`,
    source: 'geometry',
    at: 'Euclid X.29, lemma',
    expected: c * 30,
    got: isProblem(found) ? found : found.value,
  });
});

it.each(euclid)('offers %i, %i, %i where it fits exactly, the largest first', (a, b, c) => {
  const found = wholeNumberTriangles(b * 25.4, a * 25.4, 25.4);
  const triangles = isProblem(found) ? [] : found;
  expect(triangles[0]).toMatchObject({ along: b * 25.4, across: a * 25.4, diagonal: c * 25.4 });
  for (const { along, across, diagonal } of triangles) {
    const [x = 0, y = 0, z = 0] = [along, across, diagonal].map((size) => Math.round(size / 25.4));
    expect(x ** 2 + y ** 2).toBe(z ** 2);
    expect([x, y, z].map((inches) => inches * 25.4)).toEqual(
      [along, across, diagonal].map((size) => expect.closeTo(size, 9)),
    );
  }
});

it('fits the triangles into the piece, in whole steps', () => {
  const found = wholeNumberTriangles(1800, 800, 100);
  expect(found).toMatchObject([
    { along: 1500, across: 800, diagonal: 1700 },
    { along: 1200, across: 500 },
    { along: 800, across: 600 },
    { along: 600, across: 800 },
  ]);
  expect(wholeNumberTriangles(250, 200, 100)).toEqual([]);
});

it('refuses what is no length', () => {
  expect(layoutDiagonal(0, 5)).toMatchObject({ field: 'length' });
  expect(layoutDiagonal(5, Number.NaN)).toMatchObject({ field: 'width' });
  expect(wholeNumberTriangles(-1, 5, 1)).toMatchObject({ field: 'length' });
  expect(wholeNumberTriangles(5, 5, 0)).toMatchObject({ field: 'unit' });
});
