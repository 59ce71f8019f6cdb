import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { emptyForm, type MixText } from '../../../src/screens/finish/finish-form.ts';
import { mixCoat, readMix } from '../../../src/screens/finish/read-mix.ts';
import { solved } from '../../core/gluing/helpers.ts';
import { outside } from '../../setup/outside.ts';

const text = (change: Partial<MixText>): MixText => ({ ...emptyForm.mix, on: true, a: '3', ...change });

test('40 ml left of B at 3 to 1 make 160 ml', () => {
  const { rest, problems } = readMix(text({ left: '40' }), 'mm');
  expect(problems.size).toBe(0);
  // By hand: 40 of B with 3 x 40 of A. Doubles leave only rounding.
  expect(rest?.value.litres).toBeCloseTo(0.16, 12);
  expect(rest?.value.litresA).toBeCloseTo(0.12, 12);
});

test('US fluid ounces for makers who read inches', () => {
  // Doubles leave only rounding.
  outside({
    what: '1 fl oz left of a part, litres',
    source: 'nist-sp811',
    at: 'appendix B',
    expected: 0.0295735295625,
    got: readMix(text({ left: '1', leftPart: 'A' }), 'in').rest?.value.litresA,
    tolerance: 5e-13,
  });
});

test('by mass both densities are needed, and then a scale is served', () => {
  expect([...readMix(text({ by: 'mass' }), 'mm').problems.keys()]).toEqual(['densityA']);
  const { ratio } = readMix(text({ by: 'mass', densityA: '1', densityB: '0,9' }), 'mm');
  const coat = ratio && solved(mixCoat(0.2, ratio, undefined, ''));
  expect((coat?.each.value.gramsA ?? 0) / (coat?.each.value.gramsB ?? 1)).toBeCloseTo(3, 12);
});

test('a slow hand and a short pot life ask for two batches', () => {
  const { ratio, potLifeSeconds } = readMix(text({ potLife: '40' }), 'mm');
  expect(potLifeSeconds).toBe(2400);
  if (!ratio) throw new Error('no ratio');
  // By hand: four fifths of 40 min is 32 min; a coat of 60 min needs two batches, one of 32 min needs one.
  const slow = solved(mixCoat(0.2, ratio, potLifeSeconds, '60'));
  expect(slow.batches?.value.count).toBe(2);
  expect(slow.each.value.litres).toBeCloseTo(0.1, 12);
  expect(solved(mixCoat(0.2, ratio, potLifeSeconds, '32')).batches?.value.count).toBe(1);
  expect(solved(mixCoat(0.2, ratio, potLifeSeconds, '')).batches).toBeUndefined();
});

test.each(['0', 'slow', '1e9'])('a pace of %s is said at its entry', (pace) => {
  const { ratio } = readMix(text({}), 'mm');
  const found = ratio && mixCoat(0.2, ratio, 2400, pace);
  expect(isProblem(found) && found.field).toBe('pace');
});
