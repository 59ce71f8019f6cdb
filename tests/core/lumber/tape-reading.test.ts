import { expect, it } from 'vitest';
import { wholeFeet, widthInInches } from '../../../src/core/lumber/tape-reading.ts';

it.each([
  [158.75, 6.25],
  [158.8, 6.25],
  [158.7, 6.25],
  [165, 165 / 25.4], // a tenth under 6 1/2 in: that is no rounding, so the width stays what was measured
])('%d mm of width are %d in', (mm, inches) => {
  expect(widthInInches(mm)).toBe(inches);
});

it.each([
  [2438.4, 8],
  [2438, 8],
  [2437.8, 7],
  [2742.6, 8],
])('%d mm of length have %d whole feet', (mm, feet) => {
  expect(wholeFeet(mm)).toBe(feet);
});

it('loses no foot of any whole number of feet, kept exactly, to 0.1 mm or to 1 mm', () => {
  for (let feet = 1; feet <= 40; feet++) {
    const mm = feet * 304.8;
    for (const kept of [mm, Math.round(mm * 10) / 10, Math.round(mm)]) expect(wholeFeet(kept)).toBe(feet);
  }
});
