import fc from 'fast-check';
import { expect, it } from 'vitest';
import { exaggeratedOutline } from '../../../src/core/square/exaggerated-outline.ts';
import { isConvex } from '../../../src/core/square/quadrilateral.ts';
import { crooked, rectangleOf } from './random-pieces.ts';

it('draws the departure from a rectangle so many times, and a shape that still is one', () => {
  fc.assert(
    fc.property(crooked, (shape) => {
      const { corners, square, factor } = exaggeratedOutline(shape);
      for (const name of ['C', 'D'] as const) {
        expect(corners[name].x - square[name].x).toBeCloseTo(factor * (shape[name].x - square[name].x), 6);
        expect(corners[name].y - square[name].y).toBeCloseTo(factor * (shape[name].y - square[name].y), 6);
      }
      expect(isConvex(corners)).toBe(true);
      expect([1, 2, 5]).toContain(Math.round(factor / 10 ** Math.floor(Math.log10(factor) + 1e-9)));
    }),
  );
});

it('takes the largest round factor that keeps the worst corner within a twelfth of the shorter side', () => {
  const panel = rectangleOf(1800, 800);
  // 800 / 12 = 66: 50 times 1, 20 times 3, 1 time 80.
  expect(exaggeratedOutline({ ...panel, C: { x: 1801, y: 800 } }).factor).toBe(50);
  expect(exaggeratedOutline({ ...panel, C: { x: 1803, y: 800 } }).factor).toBe(20);
  expect(exaggeratedOutline({ ...panel, C: { x: 1880, y: 800 } }).factor).toBe(1);
  expect(exaggeratedOutline(panel)).toEqual({ corners: panel, square: panel, factor: 1 });
});
