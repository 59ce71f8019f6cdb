import { expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { temperatureCorrection } from '../../../src/core/moisture/temperature-correction.ts';
import { outside } from '../../setup/outside.ts';

const corrected = (percent: number, celsius: number): number => {
  const answer = temperatureCorrection({ percent, celsius });
  if (isProblem(answer)) throw new Error(answer.message.text);
  return answer.value;
};

it.each([
  ['at the temperature of calibration', 21.1, 10],
  ['5.6 degrees (10 F) colder', 21.1 - 5.6, 10.5],
  ['11.2 degrees (20 F) warmer', 21.1 + 11.2, 9],
])(
  'adds half a percent for each 10 degrees Fahrenheit below calibration, takes it off above: %s',
  (wood, celsius, expected) => {
    // Doubles leave only rounding.
    outside({
      what: `10 % read on wood ${wood}: moisture, %`,
      source: 'wood-handbook-memory',
      at: 'half a percent for each 5.6 degrees Celsius',
      expected,
      got: corrected(10, celsius),
      tolerance: 5e-10,
    });
  },
);

it('never goes below nothing', () => {
  expect(corrected(1, 45)).toBe(0);
});

it.each([
  [{ percent: 31, celsius: 20 }, 'percent'],
  [{ percent: 10, celsius: Number.NaN }, 'celsius'],
  [{ percent: 10, celsius: -10 }, 'celsius'],
])('names what is wrong with %o', (reading, field) => {
  expect(temperatureCorrection(reading)).toMatchObject({ kind: 'problem', field });
});
