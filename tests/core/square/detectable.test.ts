import fc from 'fast-check';
import { expect, it } from 'vitest';
import { detectableSlide } from '../../../src/core/square/detectable.ts';
import { withoutReading } from '../../../src/core/square/readings.ts';
import { read, rectangleOf, size } from './random-pieces.ts';

it('is precision x diagonal / front with all six read, half of it with a stick, all of it with one end square', () => {
  fc.assert(
    fc.property(size, size, fc.double({ min: 0.01, max: 2, noNaN: true }), (length, width, within) => {
      const unit = (within * Math.hypot(length, width)) / length;
      const stick = { readings: { front: length, left: width, difference: 0 }, farEnd: 'parallel' } as const;
      // A step of a ten-thousandth of the front bends the lengths by up to that over a narrow end: 1 percent.
      expect(detectableSlide({ readings: read(rectangleOf(length, width)) }, within) / unit).toBeCloseTo(1, 2);
      expect(detectableSlide(stick, within) / unit).toBeCloseTo(0.5, 2);
      expect(detectableSlide({ ...stick, farEnd: 'square' }, within) / unit).toBeCloseTo(1, 1);
    }),
  );
});

it('is larger with one diagonal, for then all five errors add up', () => {
  const five = withoutReading(read(rectangleOf(1800, 800)), 'diagonalBD');
  // (1800 + 800 + 1969.77) / 1800 x 0.5.
  expect(detectableSlide({ readings: five }, 0.5)).toBeCloseTo(1.269, 2);
});

it('is without end where nothing shows a lean, and never below the finest reading', () => {
  expect(detectableSlide({ readings: { front: 300, back: 300 } }, 0.5)).toBe(Number.POSITIVE_INFINITY);
  expect(detectableSlide({ readings: read(rectangleOf(300, 400)) }, 0)).toBeCloseTo((0.01 * 5) / 3, 4);
});
