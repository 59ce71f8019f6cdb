import { evaluate } from 'mathjs';
import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { deliveryCost } from '../../../src/core/lumber/delivery-cost.ts';
import { outside } from '../../setup/outside.ts';

test('wood at its price and the freight; against a library of arithmetic on decimals', () => {
  const input = { tallied: 103, unit: 'boardFeet', price: 9.35, freight: 48.2 } as const;
  const got = deliveryCost(input);
  if (isProblem(got)) throw new Error(got.message.text);
  // Exact decimal arithmetic. A cent's millionth is far below what anyone pays.
  outside({
    what: '103 board feet at 9.35 with 48.20 of freight: cost',
    source: 'mathjs',
    at: 'bignumber',
    expected: evaluate('number(bignumber(103) * bignumber(9.35) + bignumber(48.2))'),
    got: got.value,
    tolerance: 5e-9,
  });
  expect(got.working.steps[0]?.gives).toEqual({ value: got.value, unit: 'money' });
});

test('per cubic metre alike; figures that can’t be are named', () => {
  const input = { tallied: 0.5, unit: 'm3', price: 2400, freight: 0 } as const;
  expect(deliveryCost(input)).toMatchObject({ value: 1200 });
  expect(deliveryCost({ ...input, price: -1 })).toMatchObject({ field: 'price' });
  expect(deliveryCost({ ...input, freight: Number.NaN })).toMatchObject({ field: 'freight' });
  expect(deliveryCost({ ...input, tallied: -1 })).toMatchObject({ field: 'tallied' });
});
