import { unit } from 'mathjs';
import { expect, test } from 'vitest';
import { parseSpreadingRate } from '../../../src/core/answer/parse-spreading-rate.ts';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { outside } from '../../setup/outside.ts';

// mathjs as an independent unit library. Tolerance: its double rounding.
const american = (rate: number) => unit(rate, 'sqft/gallon').toNumber('m^2/l');

test.each([
  ['12', 'm2PerLitre', 12, 12],
  ['10-14', 'm2PerLitre', 10, 14],
  ['10 to 14 m²/L', 'ft2PerGallon', 10, 14],
  ['12 m2/l', 'ft2PerGallon', 12, 12],
  ['12 m2 per litre', 'ft2PerGallon', 12, 12],
  ['500', 'ft2PerGallon', american(500), american(500)],
  ['400–500', 'ft2PerGallon', american(400), american(500)],
  ['500 sq ft/gal', 'm2PerLitre', american(500), american(500)],
  ['500 ft²/gal', 'm2PerLitre', american(500), american(500)],
  ['500 ft2 per gallon', 'm2PerLitre', american(500), american(500)],
] as const)('reads %s with bare numbers as %s', (text, bare, least, most) => {
  const found = parseSpreadingRate(text, bare);
  if (isProblem(found)) throw new Error(found.message.text);
  outside({
    what: `${text} (bare: ${bare}), m2 per litre`,
    source: 'mathjs',
    at: 'unit',
    expected: [least, most],
    got: [found.least, found.most],
    tolerance: 5e-10,
  });
});

test.each(['', 'm²/L', '12 miles', '14-10'])('refuses %j', (text) => {
  expect(isProblem(parseSpreadingRate(text, 'm2PerLitre'))).toBe(true);
});
