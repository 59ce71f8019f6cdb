import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { parseLength } from '../../../src/core/length/parse-length.ts';
import { pressKey } from '../../../src/ui/pad/press-key.ts';

const inches = { unit: 'in', nearest: 16 } as const;
const millimetres = { unit: 'mm', nearest: 16 } as const;
const back = '⌫';
const press = (keys: string[], units: { unit: 'in' | 'mm'; nearest: number } = inches) =>
  keys.reduce((text, key) => pressKey(text, key, units), '');

test('a whole number and a fraction', () => expect(press(['5', '3/4'])).toBe('5 3/4'));
test('another fraction takes the place of the first', () => expect(press(['5', '3/4', '1/8'])).toBe('5 1/8'));
test('a fraction alone', () => expect(press(['7/8'])).toBe('7/8'));
test('a digit after a fraction is not taken', () => expect(press(['5', '3/4', '2'])).toBe('5 3/4'));
test('feet and inches', () => expect(press(['3', 'ft', '2', '1/2'])).toBe("3' 2 1/2"));
test('one sixteenth more', () => expect(press(['5', '3/4', '+1/16'])).toBe('5 13/16'));
test('never below nothing', () => expect(press(['−1/16'])).toBe('0'));
test('delete takes a fraction at once, then digit by digit', () => {
  expect(press(['1', '5', '3/4', back])).toBe('15');
  expect(press(['1', '5', '3/4', back, back])).toBe('1');
  expect(press(['3', 'ft', back])).toBe('3');
});
test('a unit takes the place of another', () => expect(press(['1', '4', 'cm', 'mm'], millimetres)).toBe('14 mm'));

test('whatever is pressed, the text can be cleared with delete', () => {
  const key = fc.oneof(
    fc.constantFrom(...'0123456789.'),
    fc.constantFrom('1/8', '1/4', '3/8', '1/2'),
    fc.constantFrom('ft', 'in', 'mm', 'cm', 'm'),
    fc.constantFrom('+1/16', '−1/16'),
  );
  fc.assert(
    fc.property(fc.array(key, { maxLength: 12 }), (keys) => {
      let text = press(keys);
      for (let presses = 0; text !== '' && presses < 40; presses++) text = pressKey(text, back, inches);
      expect(text).toBe('');
    }),
  );
});

test('digits, one fraction and feet always read as a length', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 11 }), (feet, whole) => {
      const keys = [...String(feet), 'ft', ...String(whole), '3/8'];
      const mm = parseLength(press(keys), 'in');
      expect(isProblem(mm)).toBe(false);
      // One rounding to a double: 1e-9 mm is far below any fraction of an inch.
      expect(mm).toBeCloseTo((feet * 12 + whole + 0.375) * 25.4, 9);
    }),
  );
});
