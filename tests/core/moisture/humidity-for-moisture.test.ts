import fc from 'fast-check';
import { expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { equilibriumMoisture } from '../../../src/core/moisture/equilibrium-moisture.ts';
import { humidityForMoisture } from '../../../src/core/moisture/humidity-for-moisture.ts';
import { outside } from '../../setup/outside.ts';

// Tolerance: fifty halvings leave 1e-13; the sorption equation's own rounding widens that to 1e-9 near saturation.
it('turns the sorption equation round', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -20, max: 60, noNaN: true }),
      fc.double({ min: 0, max: 100, noNaN: true }),
      (celsius, humidity) => {
        const there = equilibriumMoisture({ celsius, humidity });
        if (isProblem(there)) throw new Error('in range');
        const back = humidityForMoisture({ celsius, percent: there.value });
        if (isProblem(back)) throw new Error('in range');
        expect(Math.abs(back.value - humidity)).toBeLessThan(1e-9);
      },
    ),
  );
});

it('finds the humidity for a tabulated moisture', () => {
  const answer = humidityForMoisture({ celsius: 21.1, percent: 9.2 });
  // One decimal of moisture is half a percent of humidity.
  outside({
    what: '9.2 % moisture at 70 F: relative humidity, %',
    source: 'wood-handbook-memory',
    at: 'Table 4-2',
    expected: 50,
    got: isProblem(answer) ? answer : answer.value,
    tolerance: 0.5,
  });
});

it.each([
  [{ celsius: 21, percent: 29 }, 'percent'],
  [{ celsius: 21, percent: 31 }, 'percent'],
  [{ celsius: 21, percent: -1 }, 'percent'],
  [{ celsius: Number.NaN, percent: 8 }, 'celsius'],
])('names what is wrong with %o', (wanted, field) => {
  expect(humidityForMoisture(wanted)).toMatchObject({ kind: 'problem', field });
});
