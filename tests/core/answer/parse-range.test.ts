import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseRange } from '../../../src/core/answer/parse-range.ts';
import { isProblem } from '../../../src/core/answer/problem.ts';

test.each([
  ['12', 12, 12],
  ['9,5', 9.5, 9.5],
  ['10-14', 10, 14],
  ['10 – 14', 10, 14],
  ['10 to 14', 10, 14],
  [' 0.5—1 ', 0.5, 1],
])('reads %s', (text, least, most) => {
  expect(parseRange(text)).toEqual({ least, most });
});

test.each(['', 'ten', '14-10', '1-2-3', '-5', '10-', '10 to'])('refuses %j and says why', (text) => {
  const found = parseRange(text);
  expect(isProblem(found) && found.message.text.length).toBeGreaterThan(5);
});

test('two numbers come back whichever dash stands between them', () => {
  fc.assert(
    fc.property(fc.nat(9999), fc.nat(9999), fc.constantFrom('-', '–', ' to ', ' - '), (a, b, dash) => {
      const [least, most] = a < b ? [a, b] : [b, a];
      expect(parseRange(`${least}${dash}${most}`)).toEqual({ least, most });
    }),
  );
});
