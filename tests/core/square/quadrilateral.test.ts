import { expect, it } from 'vitest';
import { cornerAngles, isConvex, lengthsOf } from '../../../src/core/square/quadrilateral.ts';
import { outside } from '../../setup/outside.ts';
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
  const shape = { ...rectangleOf(40, 30), C: { x: 80, y: 30 } };
  const { front, right, back, left, diagonalBD } = lengthsOf(shape);
  expect([front, back]).toEqual([40, 80]);
  outside({
    what: 'panel with ends of 30 and 50 mm over 40 mm: right end, left end, diagonal B to D, mm',
    source: 'geometry',
    at: 'Euclid I.47, 3 4 5',
    expected: [50, 30, 50],
    got: [right, left, diagonalBD],
  });
  const { A, B, C, D } = cornerAngles(shape);
  expect([A, D]).toEqual([90, 90]);
  // cos B = -4/5 and C makes up the rest of 180.
  expect(Math.cos((B * Math.PI) / 180)).toBeCloseTo(-0.8, 12);
  expect(B + C).toBeCloseTo(180, 12);
});
