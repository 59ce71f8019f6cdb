import { expect, it } from 'vitest';
import { figure } from '../../src/figure/moisture.ts';

// Wood handbook (FPL-GTR-190), Table 4-2, row 70 F, recalled: 9.2 % at 50 %; one decimal.
it('answers the tabulated moisture', () => {
  expect((figure({ celsius: 21.1, humidity: 50 }) as { percent: number }).percent).toBeCloseTo(9.2, 1);
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
