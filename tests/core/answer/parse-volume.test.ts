import { unit } from 'mathjs';
import { expect, test } from 'vitest';
import { parseVolume } from '../../../src/core/answer/parse-volume.ts';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { outside } from '../../setup/outside.ts';

// mathjs is an independent unit library: its US measures are those of NIST SP 811. Tolerance: its double rounding.
test.each([
  ['750 ml', 'qt', unit(750, 'ml')],
  ['2,5 l', 'qt', unit(2.5, 'l')],
  ['2', 'l', unit(2, 'l')],
  ['2', 'qt', unit(2, 'quart')],
  ['40', 'ml', unit(40, 'ml')],
  ['4', 'floz', unit(4, 'floz')],
  ['1 qt', 'l', unit(1, 'quart')],
  ['1/2 pt', 'l', unit(0.5, 'pint')],
  ['1 1/2 Pints', 'l', unit(1.5, 'pint')],
  ['8 fl. oz', 'l', unit(8, 'floz')],
  ['0.25 gallons', 'l', unit(0.25, 'gallon')],
] as const)('reads %s with bare numbers in %s', (text, bare, same) => {
  const expected = same.toNumber('l');
  const got = parseVolume(text, bare);
  outside({ what: `${text} (bare: ${bare}), litres`, source: 'mathjs', at: 'unit', expected, got, tolerance: 5e-10 });
});

test.each(['', 'half a pint', '1 stone', '1/0 qt', '-1 l', 'l', '1.2.3 l', 'constructor', '1 constructor'])(
  'refuses %j',
  (text) => {
    const found = parseVolume(text, 'l');
    expect(isProblem(found) && found.message.text.length).toBeGreaterThan(5);
  },
);
