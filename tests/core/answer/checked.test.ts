import { expect, test } from 'vitest';
import { badNumber } from '../../../src/core/answer/bad-number.ts';
import { checked } from '../../../src/core/answer/checked.ts';
import { problem } from '../../../src/core/answer/problem.ts';
import { quantity } from '../../../src/core/answer/quantity.ts';
import { resultOf } from '../../../src/core/answer/result-of.ts';
import { addedUp } from '../../../src/core/lumber/added-up.ts';

const check = (value: number) => badNumber('alike', 'The number', value, 'count', { most: 5 });

test('a value passes, or what is wrong with it comes back; an earlier problem isn’t checked', () => {
  expect(checked(5, check)).toBe(5);
  expect(checked(6, check)).toMatchObject({ field: 'alike' });
  const before = problem('text', 'Not a number.');
  expect(checked<number>(before, check)).toBe(before);
});

test('the result of a working is what its last step gives', () => {
  const sums = addedUp([{ surfaceMeasure: 4, boardFeet: 8, cubicMetres: 0.02 }]);
  expect(resultOf(sums.boardFeet)).toEqual(quantity(8, 'boardFeet'));
  expect(resultOf(sums.cubicMetres)).toEqual(quantity(0.02, 'm3'));
});
