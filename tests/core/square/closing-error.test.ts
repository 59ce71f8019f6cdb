import fc from 'fast-check';
import { expect, it } from 'vitest';
import { closingError } from '../../../src/core/square/closing-error.ts';
import { fitQuadrilateral } from '../../../src/core/square/fit-quadrilateral.ts';
import { lineNames, type Readings, withoutReading } from '../../../src/core/square/readings.ts';
import { anyShape } from '../../../src/core/square/shape-family.ts';
import { errors, precision, read, rectangleOf, size } from './random-pieces.ts';

function close(readings: Readings, within = 0.5) {
  return closingError(fitQuadrilateral(anyShape, readings), within);
}
const all = read(rectangleOf(1800, 800));

it('is the part of an error that no shape explains', () => {
  // On a rectangle the readings' only constraint reads a (front + back) + b (right + left) - d (AC + BD), all divided
  // by 2 d: it is the parallelogram law, differentiated. An error e in one reading leaves e x its share:
  // a / 2d = 0.4569, b / 2d = 0.2031, 1/2. Errors of 3 bend that by about e / a, 0.2 percent.
  const shares = { front: 0.4569, back: 0.4569, right: 0.2031, left: 0.2031, diagonalAC: 0.5, diagonalBD: 0.5 };
  for (const name of lineNames) {
    const { closing, spare } = close({ ...all, [name]: (all[name] ?? 0) + 3 });
    expect(closing / (3 * shares[name])).toBeCloseTo(1, 2);
    expect(spare).toBe(1);
  }
});

it('is explained by a precision of the error over the sum of the shares', () => {
  // (a + b + d) / d = 2.32 shares in all: an error of 3 in a diagonal needs 1.5 / 2.32 = 0.647 of every reading.
  const off = { ...all, diagonalAC: (all.diagonalAC ?? 0) + 3 };
  expect(close(off).needed).toBeCloseTo(0.647, 2);
  expect(close(off, 0.66).consistent).toBe(true);
  expect(close(off, 0.63).consistent).toBe(false);
});

it('is always explained while no reading is off by more than the precision', () => {
  fc.assert(
    fc.property(size, size, errors, precision, (length, width, off, given) => {
      const within = Math.min(given, length / 20, width / 20);
      expect(close(read(rectangleOf(length, width), off, within * 0.98), within).consistent).toBe(true);
    }),
  );
});

it('is nothing where nothing is measured twice over', () => {
  expect(close(withoutReading({ ...all, right: 820 }, 'left'))).toMatchObject({
    closing: 0,
    spare: 0,
    consistent: true,
  });
});
