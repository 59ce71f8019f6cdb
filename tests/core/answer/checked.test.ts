import { expect, test } from 'vitest';
import { badNumber } from '../../../src/core/answer/bad-number.ts';
import { checked } from '../../../src/core/answer/checked.ts';
import { nextStep } from '../../../src/core/answer/next-step.ts';
import { oneStep } from '../../../src/core/answer/one-step.ts';
import { phrase } from '../../../src/core/answer/phrase.ts';
import { problem } from '../../../src/core/answer/problem.ts';
import { boardFeet, count, quantity } from '../../../src/core/answer/quantity.ts';
import { resultOf } from '../../../src/core/answer/result-of.ts';

const check = (value: number) => badNumber('alike', 'The number', value, 'count', { most: 5 });

test('a value passes, or what is wrong with it comes back; an earlier problem isn’t checked', () => {
  expect(checked(5, check)).toBe(5);
  expect(checked(6, check)).toMatchObject({ field: 'alike' });
  const before = problem('text', 'Not a number.');
  expect(checked<number>(before, check)).toBe(before);
});

test('the result of a working is what its last step gives; a further step rests on all that the others do', () => {
  const feet = oneStep('face', phrase`4 × 2`, count(8), ['nhla'], phrase`rough boards`);
  expect(resultOf(feet)).toEqual(quantity(8, 'count'));
  const further = nextStep(feet, 'board feet', phrase`face × 2`, boardFeet(16), ['nhla', 'ahec']);
  expect(resultOf(further)).toEqual(quantity(16, 'boardFeet'));
  expect(further).toMatchObject({ value: 16, working: { sources: ['nhla', 'ahec'], holds: feet.working.holds } });
  expect(further.working.steps.map(({ finds }) => finds)).toEqual(['face', 'board feet']);
});
