import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fitQuadrilateral } from '../../../src/core/square/fit-quadrilateral.ts';
import { type FarEnd, familyOf } from '../../../src/core/square/measured.ts';
import { slidesOf } from '../../../src/core/square/slide.ts';
import { stickDifference } from '../../../src/core/square/stick-difference.ts';

it('agrees with the fitted shape to the first order', () => {
  const side = fc.double({ min: 200, max: 3000, noNaN: true });
  fc.assert(
    fc.property(
      side,
      side,
      fc.double({ min: -1, max: 1, noNaN: true }),
      fc.constantFrom<FarEnd>('parallel', 'square'),
      (length, width, difference, farEnd) => {
        const readings = { front: length, left: width, difference };
        const exact = slidesOf(fitQuadrilateral(familyOf({ readings, farEnd }), readings).shape);
        const lean = stickDifference(length, width, difference, farEnd).value;
        // The second order of a lean is its square over twice the front: at most 30² / 400, and in proportion.
        const bend = lean ** 2 * (1 / length + width ** 2 / length ** 3) + 1e-4;
        expect(Math.abs(lean + exact.C)).toBeLessThan(bend);
        expect(Math.abs((farEnd === 'square' ? 0 : lean) - exact.D)).toBeLessThan(bend);
      },
    ),
  );
});

it('shows half the difference, the diagonal over the length, and the doubling', () => {
  const alike = stickDifference(1800, 800, 2, 'parallel');
  const one = stickDifference(1800, 800, 2, 'square');
  expect(alike.value).toBeCloseTo(1.0943, 4);
  expect(one.value).toBeCloseTo(2 * alike.value, 12);
  expect(alike.working.steps.map(({ finds }) => finds)).toEqual([
    'diagonal',
    'half the difference',
    'lean, both ends alike',
  ]);
  expect(one.working.steps.at(-1)?.gives.value).toBe(one.value);
});
