import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shownLength } from '../../../src/core/length/shown-length.ts';
import { splitLength } from '../../../src/core/length/split-length.ts';

const sixteenths = { unit: 'in', nearest: 16 } as const;
const millimetres = { unit: 'mm', nearest: 16 } as const;

test('what would vanish is written as a decimal', () => {
  expect(shownLength(0.45, sixteenths).whole).toBe('0.018');
  expect(shownLength(-0.45, sixteenths)).toMatchObject({ negative: true, whole: '0.018', numerator: 0 });
  expect(shownLength(0.03, millimetres).whole).toBe('0.03');
});

test('what is too small even for that is nothing', () => {
  expect(shownLength(0.001, sixteenths)).toMatchObject({ negative: false, whole: '0' });
  expect(shownLength(-0.001, millimetres)).toMatchObject({ negative: false, whole: '0' });
});

test('any other length is written as ever', () => {
  const units = fc.constantFrom(sixteenths, millimetres);
  fc.assert(
    fc.property(fc.double({ min: 0.8, max: 12_000, noNaN: true }), units, (mm, maker) => {
      expect(shownLength(mm, maker)).toEqual(splitLength(mm, maker));
    }),
  );
});
