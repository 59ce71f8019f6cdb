import { expect, test } from 'vitest';
import { range } from '../../../src/core/answer/range.ts';
import { addAmounts } from '../../../src/core/finishing/add-amounts.ts';
import { finishAmount } from '../../../src/core/finishing/finish-amount.ts';
import { solved } from '../gluing/helpers.ts';

const amount = (areaM2: number, coats: number) =>
  solved(finishAmount({ areaM2, coverage: range(10, 12.5), coats, source: 'label' }));

test('coats add up one by one; what has fewer drops out of the later ones', () => {
  const { value, working } = addAmounts([
    { what: 'cherry', amount: amount(2.5, 3) },
    { what: 'maple', amount: amount(5, 1) },
  ]);
  // By hand at the near end: 2.5 / 10 and 5 / 10. Doubles leave only rounding.
  expect(value.coats.map(({ most }) => most)).toEqual([
    expect.closeTo(0.75, 12),
    expect.closeTo(0.25, 12),
    expect.closeTo(0.25, 12),
  ]);
  expect(value.total.most).toBeCloseTo(1.25, 12);
  expect(value.total.least).toBeCloseTo(1, 12);
  expect(working.steps.at(-1)?.gives.value).toBe(value.total.likely);
  expect(working.steps[0]?.finds).toBe('cherry, coat 1');
});

test('two halves of an area take what the whole takes', () => {
  const half = { what: 'half', amount: amount(1.6, 2) };
  const whole = amount(3.2, 2).value.total;
  expect(addAmounts([half, half]).value.total.likely).toBeCloseTo(whole.likely, 12);
});

test('one wood takes what it takes; nothing takes nothing', () => {
  const one = amount(1, 1);
  expect(addAmounts([{ what: 'oak', amount: one }]).value).toEqual(one.value);
  expect(addAmounts([]).value).toEqual({ coats: [], total: { least: 0, likely: 0, most: 0 } });
});
