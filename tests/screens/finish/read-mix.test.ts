import { afterEach, expect, test } from 'vitest';
import { emptyForm, type MixText } from '../../../src/screens/finish/finish-form.ts';
import { readMix } from '../../../src/screens/finish/read-mix.ts';
import { formReader } from '../../../src/ui/form-reader.ts';
import { units } from '../../../src/ui/units.ts';
import { outside } from '../../setup/outside.ts';

afterEach(() => {
  units.value = { unit: 'mm', nearest: 16 };
});

function read(change: Partial<MixText>) {
  const reader = formReader();
  return { ...readMix({ ...emptyForm.mix, on: true, a: '3', ...change }, reader), problems: reader.problems };
}

test('40 ml left of B at 3 to 1 make 160 ml', () => {
  const { rest, problems } = read({ left: '40' });
  expect(problems.size).toBe(0);
  // By hand: 40 of B with 3 x 40 of A. Doubles leave only rounding.
  expect(rest?.value.litres).toBeCloseTo(0.16, 12);
  expect(rest?.value.litresA).toBeCloseTo(0.12, 12);
});

test('US fluid ounces for makers who read inches', () => {
  units.value = { unit: 'in', nearest: 16 };
  // Doubles leave only rounding.
  outside({
    what: '1 fl oz left of a part, litres',
    source: 'nist-sp811',
    at: 'appendix B',
    expected: 0.0295735295625,
    got: read({ left: '1', leftPart: 'A' }).rest?.value.litresA,
    tolerance: 5e-13,
  });
});

test('by mass both densities are needed, and then a scale is served', () => {
  expect([...read({ by: 'mass' }).problems.keys()]).toEqual(['mix.densityA']);
  const { rest } = read({ by: 'mass', densityA: '1', densityB: '0,9', left: '40' });
  expect((rest?.value.gramsA ?? 0) / (rest?.value.gramsB ?? 1)).toBeCloseTo(3, 12);
});

test('a slow hand and a short pot life ask for two batches', () => {
  // By hand: four fifths of 40 min is 32 min; a coat of 60 min needs two batches, one of 32 min needs one.
  const slow = read({ potLife: '40', pace: '60' });
  expect(slow.potLifeSeconds).toBe(2400);
  expect(slow.batches?.value).toBe(2);
  expect(read({ potLife: '40', pace: '32' }).batches?.value).toBe(1);
  expect(read({ potLife: '40' }).batches).toBeUndefined();
});
