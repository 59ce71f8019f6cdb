import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lengthText } from '../../../src/core/length/format-length.ts';
import { shownLength } from '../../../src/core/length/shown-length.ts';
import { splitLength } from '../../../src/core/length/split-length.ts';

const sixteenths = { unit: 'in', nearest: 16 } as const;
const millimetres = { unit: 'mm', nearest: 16 } as const;

test('what is less than the finest step keeps its size', () => {
  // By hand: 1/32 in is 0.79375 mm, 3/64 in is 1.190625 mm; a sixteenth in the place of either would be far off.
  expect(lengthText(shownLength(0.79375, sixteenths))).toBe('1/32');
  expect(lengthText(shownLength(-1.190625, sixteenths))).toBe('−3/64');
  expect(lengthText(shownLength(1.58, sixteenths))).toBe('1/16');
  expect(lengthText(shownLength(0.06, millimetres))).toBe('0.06');
  expect(lengthText(shownLength(0.0999, millimetres))).toBe('0.1');
});

test('what would vanish is written in sixty-fourths, as a tape could show it', () => {
  expect(lengthText(shownLength(0.45, sixteenths))).toBe('1/64');
  expect(lengthText(shownLength(0.3, sixteenths))).toBe('1/64');
  expect(lengthText(shownLength(-0.63, sixteenths))).toBe('−1/32');
  expect(lengthText(shownLength(25.4 / 64, { unit: 'in', nearest: 32 }))).toBe('1/64');
  expect(lengthText(shownLength(1.5, { unit: 'in', nearest: 8 }))).toBe('1/16');
});

test('what no tape shows is written as a decimal', () => {
  expect(shownLength(0.2, sixteenths).whole).toBe('0.008');
  expect(shownLength(-0.2, sixteenths)).toMatchObject({ negative: true, whole: '0.008', numerator: 0 });
  expect(shownLength(0.03, millimetres).whole).toBe('0.03');
});

test('what is too small even for that is nothing', () => {
  expect(shownLength(0.001, sixteenths)).toMatchObject({ negative: false, whole: '0' });
  expect(shownLength(-0.001, millimetres)).toMatchObject({ negative: false, whole: '0' });
});

test('any other length is written as ever', () => {
  const units = fc.constantFrom(sixteenths, millimetres);
  fc.assert(
    fc.property(fc.double({ min: 1.5875, max: 12_000, noNaN: true }), units, (mm, maker) => {
      expect(shownLength(mm, maker)).toEqual(splitLength(mm, maker));
    }),
  );
});
