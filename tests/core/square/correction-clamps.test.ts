import fc from 'fast-check';
import { expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { correctionClamps } from '../../../src/core/square/correction-clamps.ts';
import type { Quadrilateral } from '../../../src/core/square/quadrilateral.ts';
import { outsideCases } from '../../setup/outside.ts';
import { rectangleOf, size } from './random-pieces.ts';

const racked = (length: number, width: number, lean: number): Quadrilateral => ({
  ...rectangleOf(length, width),
  C: { x: length + lean, y: width },
  D: { x: lean, y: width },
});

const correct = (shape: Quadrilateral, springBack = 0.2) => {
  const found = correctionClamps(shape, 'racked', springBack);
  if (isProblem(found)) throw new Error(found.field);
  return found.value;
};

it('ends with the diagonal of the rectangle that has these sides', () => {
  // A millionth of a millimetre: rounding of roots.
  const same = outsideCases({
    what: 'diagonal to pull a racked case to, mm',
    source: 'geometry',
    at: 'Euclid I.47',
    tolerance: 5e-7,
    cases: 'random racked cases',
  });
  fc.assert(
    fc.property(size, size, fc.double({ min: -0.03, max: 0.03, noNaN: true }), (length, width, lean) => {
      const by = lean * width;
      const { square, squeeze, shorten } = correct(racked(length, width, by));
      // An end that leans by `by` over `width` is hypot(width, by) long.
      same(square, Math.hypot(length, Math.hypot(width, by)));
      if (Math.abs(by) > 1e-3) expect(squeeze).toBe(by > 0 ? 'diagonalAC' : 'diagonalBD');
      expect(shorten).toBeGreaterThanOrEqual(-1e-9);
    }),
  );
});

it('pulls past square by what springs back, and so ends square', () => {
  const found = correct(racked(900, 700, 6), 0.25);
  const long = found.square + found.shorten;
  // Of the pull a quarter comes back.
  expect(long - (long - found.pullTo) * 0.75).toBeCloseTo(found.square, 9);
  expect(found.squeeze).toBe('diagonalAC');
});

it('leaves a square piece be, and knows what clamps cannot cure', () => {
  expect(correctionClamps(rectangleOf(900, 700), 'square', 0.2)).toMatchObject({ value: { shorten: 0 } });
  expect(correctionClamps(racked(900, 700, 5), 'tapered', 0.2)).toMatchObject({ field: 'shape' });
  expect(correctionClamps(racked(900, 700, 5), 'racked', 1)).toMatchObject({ field: 'springBack' });
  expect(correctionClamps(racked(900, 700, 5), 'racked', Number.NaN)).toMatchObject({ field: 'springBack' });
});
