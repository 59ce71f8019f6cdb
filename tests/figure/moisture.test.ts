import { expect, it } from 'vitest';
import { figure } from '../../src/figure/moisture.ts';
import { outside } from '../setup/outside.ts';

it('answers the tabulated moisture', () => {
  // The table has one decimal.
  outside({
    what: 'figure: 70 F and 50 % relative humidity: equilibrium moisture, %',
    source: 'wood-handbook-memory',
    at: 'Table 4-2',
    expected: 9.2,
    got: (figure({ celsius: 21.1, humidity: 50 }) as { percent: number }).percent,
    tolerance: 0.05,
  });
});

it.each([
  [{ celsius: 21.1, humidity: 101 }, 'humidity'],
  [{ celsius: 21.1, humidity: -1 }, 'humidity'],
  [{ celsius: 21.1, humidity: '50' }, 'humidity'],
  [{ celsius: 21.1 }, 'humidity'],
  [{ humidity: 50 }, 'celsius'],
  [{ celsius: null, humidity: 50 }, 'celsius'],
  [{ celsius: 500, humidity: 50 }, 'celsius'],
])('names what is wrong with %o', (input, field) => {
  expect(figure(input)).toMatchObject({ kind: 'problem', field });
});
