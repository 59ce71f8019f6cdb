import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseNumber } from '../../../src/core/answer/parse-number.ts';
import { isProblem } from '../../../src/core/answer/problem.ts';

test.each([
  ['5', 5],
  [' 5,5 ', 5.5],
  ['.25', 0.25],
  ['0', 0],
])('%s is %f', (text, value) => expect(parseNumber(text)).toBe(value));

test.each(['', '-3', '−3', '3 mm', 'abc', '1.2.3', '1,234.5', '1,234', ',', '1e5', 'NaN', 'Infinity'])(
  '%s is refused',
  (text) => expect(isProblem(parseNumber(text))).toBe(true),
);

test('any text gives a finite number or a problem', () => {
  fc.assert(
    fc.property(fc.string(), (text) => {
      const got = parseNumber(text);
      return isProblem(got) || (Number.isFinite(got) && got >= 0);
    }),
  );
});
