import { expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { temperatureCorrection } from '../../../src/core/moisture/temperature-correction.ts';

const corrected = (percent: number, celsius: number, calibratedAt?: number): number => {
  const answer = temperatureCorrection({ percent, celsius, ...(calibratedAt !== undefined && { calibratedAt }) });
  if (isProblem(answer)) throw new Error(answer.message.text);
  return answer.value;
};

// Wood handbook (FPL-GTR-190), recalled: about half a percent for each 5.6 degrees Celsius (10 degrees Fahrenheit).
it('adds half a percent for each 10 degrees Fahrenheit below calibration, takes it off above', () => {
  expect(corrected(10, 21.1)).toBe(10);
  expect(corrected(10, 21.1 - 5.6)).toBeCloseTo(10.5, 9);
  expect(corrected(10, 21.1 + 11.2)).toBeCloseTo(9, 9);
  expect(corrected(10, 20, 20)).toBe(10);
});

it('never goes below nothing', () => {
  expect(corrected(1, 45)).toBe(0);
});

it.each([
  [{ percent: 31, celsius: 20 }, 'percent'],
  [{ percent: 10, celsius: Number.NaN }, 'celsius'],
  [{ percent: 10, celsius: -10 }, 'celsius'],
  [{ percent: 10, celsius: 20, calibratedAt: 900 }, 'calibratedAt'],
])('names what is wrong with %o', (reading, field) => {
  expect(temperatureCorrection(reading)).toMatchObject({ kind: 'problem', field });
});
