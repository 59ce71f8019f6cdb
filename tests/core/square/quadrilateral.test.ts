import { expect, it } from 'vitest';
import { cornerAngles, isConvex, lengthsOf } from '../../../src/core/square/quadrilateral.ts';
import { rectangleOf } from './random-pieces.ts';

const square = rectangleOf(10, 10);

it.each([
  ['A', { x: 6, y: 6 }],
  ['B', { x: 4, y: 6 }],
  ['C', { x: 4, y: 4 }],
  ['D', { x: 6, y: 4 }],
] as const)('tells a corner %s that is pushed in past the diagonal', (name, at) => {
  expect(isConvex(square)).toBe(true);
  expect(isConvex({ ...square, [name]: at })).toBe(false);
});

it('measures sides, diagonals and corners', () => {
  // Euclid's 3, 4, 5.
  const shape = { ...rectangleOf(40, 30), C: { x: 80, y: 30 } };
  expect(lengthsOf(shape)).toMatchObject({ front: 40, right: 50, back: 80, left: 30, diagonalBD: 50 });
  const { A, B, C, D } = cornerAngles(shape);
  expect([A, D]).toEqual([90, 90]);
  // cos B = -4/5 and C makes up the rest of 180.
  expect(Math.cos((B * Math.PI) / 180)).toBeCloseTo(-0.8, 12);
  expect(B + C).toBeCloseTo(180, 12);
});
