import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatDuration } from '../../../src/core/answer/format-duration.ts';
import { roughDuration } from '../../../src/core/answer/rough-duration.ts';

test.each([
  [34, '34 s'],
  [287, '4 min 50 s'],
  [574, '9 min 30 s'],
  [1722, '29 min'],
  [4980, '1 h 20 min'],
  [41_340, '11 h'],
  [82_620, '23 h'],
  [250_000, '3 days'],
])('%d s is said as %s', (seconds, said) => {
  expect(formatDuration(roughDuration(seconds))).toBe(said);
});

test('is off by a twelfth at most, and never turns two durations round', () => {
  // A twelfth: half a step of 10 s on the first minute, of 10 min on the first hour; half of 12 h on 60 h is a tenth.
  fc.assert(
    fc.property(fc.double({ min: 0, max: 5e6, noNaN: true }), fc.double({ min: 0, max: 5e6, noNaN: true }), (a, b) => {
      expect(Math.abs(roughDuration(a) - a)).toBeLessThanOrEqual(Math.max(0.5, a < 216_000 ? a / 12 : a / 10) + 1e-9);
      if (a <= b) expect(roughDuration(a)).toBeLessThanOrEqual(roughDuration(b));
    }),
  );
});
