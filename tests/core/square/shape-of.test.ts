import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closingError } from '../../../src/core/square/closing-error.ts';
import { fitQuadrilateral } from '../../../src/core/square/fit-quadrilateral.ts';
import { familyOf, type Measured } from '../../../src/core/square/measured.ts';
import type { Quadrilateral } from '../../../src/core/square/quadrilateral.ts';
import { lineNames, type Readings, withoutReading } from '../../../src/core/square/readings.ts';
import { shapeOf } from '../../../src/core/square/shape-of.ts';
import { errors, precision, read, rectangleOf, size } from './random-pieces.ts';

function shapeWithin(measured: Measured, within: number) {
  return shapeOf(measured, within, closingError(fitQuadrilateral(familyOf(measured), measured.readings), within));
}
const shape = (readings: Readings, within = 0.5) => shapeWithin({ readings }, within);
const at = (bx: number, cx: number, cy: number, dx: number, dy: number): Quadrilateral => ({
  A: { x: 0, y: 0 },
  B: { x: bx, y: 0 },
  C: { x: cx, y: cy },
  D: { x: dx, y: dy },
});

describe('by its corners', () => {
  it.each([
    ['square', at(1800, 1800, 800, 0, 800)],
    ['racked', at(1800, 1805, 800, 5, 800)],
    // Equal diagonals: C and D both 5 in.
    ['tapered', at(1800, 1795, 800, 5, 800)],
    // Only the right end is off.
    ['tapered', at(1800, 1810, 800, 0, 800)],
    // The ends parallel, the left one longer.
    ['tapered', at(1800, 1800, 790, 0, 800)],
    ['irregular', at(1800, 1812, 790, 2, 806)],
  ] as const)('%s', (expected, corners) => {
    expect(shape(read(corners))).toBe(expected);
    // Any five readings tell as much of errors this large, all but the ones through a missing short end.
    expect(shape(withoutReading(read(corners), 'diagonalBD'))).toBe(expected);
  });
});

it('calls a rectangle square whatever its readings are off, as long as that is no more than their precision', () => {
  fc.assert(
    fc.property(size, size, errors, precision, (length, width, off, given) => {
      const within = Math.min(given, length / 20, width / 20);
      // A thousandth less: the second order.
      expect(shape(read(rectangleOf(length, width), off, within * 0.98), within)).toBe('square');
    }),
  );
});

it('sees an even lean of more than the precision x diagonal / front, and no smaller one', () => {
  fc.assert(
    fc.property(size, size, fc.double({ min: 0.01, max: 0.5, noNaN: true }), (length, width, within) => {
      // Lean s makes the diagonals differ by 2 s front / diagonal, which two errors of `within` can hide.
      const least = (within * Math.hypot(length, width)) / length;
      const leaning = (by: number) => shape(read(at(length, length + by, width, by, width)), within);
      fc.pre(least < width / 20);
      expect(leaning(least * 0.99)).toBe('square');
      expect(leaning(least * 1.01)).toBe('racked');
    }),
  );
});

it('is never sure with fewer than five readings, equal diagonals or not', () => {
  const all = read(rectangleOf(1800, 800));
  fc.assert(
    fc.property(fc.subarray([...lineNames], { minLength: 1, maxLength: 4 }), (names) => {
      expect(shape(Object.fromEntries(names.map((name) => [name, all[name]])))).toBe('undetermined');
    }),
  );
});

it('is not sure when one reading of six contradicts the rest', () => {
  const all = read(rectangleOf(1800, 800));
  expect(shape({ ...all, right: 820 })).toBe('undetermined');
});

it('is sure of a gross lean though the precision given was too fine for the readings', () => {
  // Parallelogram law: 1980² + 1960² = 2 x 1800² + 2 x 800² + 2000, a closing error of 0.25, more than 0.05 explains.
  expect(shape({ front: 1800, right: 800, back: 1800, left: 800, diagonalAC: 1980, diagonalBD: 1960 }, 0.05)).toBe(
    'racked',
  );
});

it('takes the ends as said when only the diagonals are compared', () => {
  const size = { front: 1800, left: 800 };
  const stick = { readings: { ...size, difference: 2 }, farEnd: 'parallel' } as const;
  expect(shapeWithin(stick, 0.5)).toBe('racked');
  expect(shapeWithin({ ...stick, farEnd: 'square' }, 0.5)).toBe('tapered');
  expect(shapeWithin({ ...stick, readings: { ...size, difference: 0.5 } }, 0.5)).toBe('square');
  const across = (diagonalAC: number, diagonalBD: number): Measured => ({
    readings: { ...size, diagonalAC, diagonalBD },
    farEnd: 'parallel',
  });
  expect(shapeWithin(across(1971, 1968.6), 0.5)).toBe('racked');
  // Both diagonals 5 too long for the sides: no parallelogram.
  expect(shapeWithin(across(1975, 1974), 0.5)).toBe('undetermined');
});
