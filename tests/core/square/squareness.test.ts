import fc from 'fast-check';
import { expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import type { Measured } from '../../../src/core/square/measured.ts';
import type { Quadrilateral } from '../../../src/core/square/quadrilateral.ts';
import type { Readings } from '../../../src/core/square/readings.ts';
import { type Squareness, squareness } from '../../../src/core/square/squareness.ts';
import { crooked, errors, precision, read, rectangleOf } from './random-pieces.ts';

function ask(measured: Measured, within = 0.5) {
  const found = squareness(measured, within);
  if (isProblem(found)) throw new Error(`${found.field}: ${found.message.text}`);
  return found;
}
const told = (readings: Readings, within?: number): Squareness => ask({ readings }, within).value;

const panel = rectangleOf(1800, 800);
const moved = (c: number, d: number): Quadrilateral => ({ ...panel, C: { x: 1800 + c, y: 800 }, D: { x: d, y: 800 } });

it('makes a square panel by sliding C and D as it says, whatever the panel', () => {
  fc.assert(
    fc.property(crooked, errors, precision, (real, off, given) => {
      const reach = Math.min(given, real.B.x / 200, Math.min(real.C.y, real.D.y) / 200);
      const { slide } = told(read(real, off, reach), reach);
      // Slide the real corners, then measure what is left from the upright; noise moves a slide by this much at most
      // (see the fit's test).
      const length = real.B.x;
      const width = (real.C.y + real.D.y) / 2;
      const most = (1.25 * reach * (length + width + Math.hypot(length, width))) / length + 1e-3;
      const along = (real.C.x - real.D.x) / Math.hypot(real.C.x - real.D.x, real.C.y - real.D.y);
      expect(Math.abs(real.C.x + (slide.C ?? Number.NaN) * along - real.B.x)).toBeLessThan(most);
      expect(Math.abs(real.D.x - (slide.D ?? Number.NaN) * along)).toBeLessThan(most);
    }),
  );
});

it('says what to do in one go', () => {
  expect(told(read(panel)).say.text).toBe('As square as you can measure: a lean under {0} does not show.');
  const racked = told(read(moved(4, 4))).say;
  expect(racked.text).toBe('Move C {0} towards D. Move D {1} away from C.');
  expect(racked.quantities[0]?.value).toBeCloseTo(4, 3);
  expect(told(read(moved(-6, 0))).say.text).toBe('Move C {0} away from D.');
  expect(told({ ...read(panel), right: 820 }).say.text).toBe('The right end doesn’t fit the others. Measure it again.');
  expect(told({ front: 1800, diagonalAC: 1970, diagonalBD: 1970 }).say.text).toBe(
    'These readings can’t tell. Measure the right end too.',
  );
  const long = { diagonalAC: 1976, diagonalBD: 1976 };
  expect(told({ ...read(panel), ...long }).say.text).toContain('The readings disagree by {0}. Measure all again.');
  const off = told(read({ ...panel, C: { x: 1800, y: 790 } })).say;
  expect(off.text).toContain('the back edge runs off: {0} further back at D than at C.');
  expect(off.quantities[0]?.value).toBeCloseTo(10, 2);
  expect(told(read({ ...panel, C: { x: 1800, y: 810 } })).say.text).toContain('at C than at D.');
});

it('sees through the wrong word on the ends', () => {
  const { value } = ask({
    readings: { front: 1800, left: 800, diagonalAC: 1976, diagonalBD: 1975 },
    farEnd: 'parallel',
  });
  expect(value.say.text).toContain('The ends are not as you said');
});

it('shows its working, with what it cannot tell apart', () => {
  const { working, value } = ask({ readings: { front: 1800, left: 800, difference: 2 }, farEnd: 'square' });
  expect(working.holds?.text).toContain('can’t tell');
  expect(working.steps.map(({ finds }) => finds)).toEqual([
    'diagonal',
    'half the difference',
    'lean, both ends alike',
    'lean, left end square',
    'slide of C',
    'slide of D',
    'least lean that shows',
  ]);
  expect(value.shape).toBe('tapered');
  const six = ask({ readings: read(moved(4, 4)) }).working;
  expect(six.steps.map(({ finds }) => finds)).toEqual([
    'closing error',
    'slide of C',
    'slide of D',
    'least lean that shows',
  ]);
  for (const { gives } of six.steps) expect(gives.value).not.toBeNaN();
  expect(ask({ readings: { front: 300, left: 200 } }).working.steps).toEqual([]);
});

it('hands a problem on', () => {
  expect(squareness({ readings: { front: -1 } }, 0.5)).toMatchObject({
    kind: 'problem',
    field: 'front',
  });
});
