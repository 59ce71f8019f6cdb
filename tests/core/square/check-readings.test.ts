import fc from 'fast-check';
import { expect, it } from 'vitest';
import { checkMeasured } from '../../../src/core/square/check-readings.ts';
import { lineNames, type Readings } from '../../../src/core/square/readings.ts';
import { slippedDigit } from '../../../src/core/square/slipped-digit.ts';
import { outside } from '../../setup/outside.ts';
import { crooked, errors, precision, read, rectangleOf } from './random-pieces.ts';

const check = (readings: Readings, within = 0.5) => checkMeasured({ readings }, within);
const all = read(rectangleOf(1800, 800));

it('takes any piece that furniture has', () => {
  fc.assert(
    fc.property(crooked, errors, precision, (real, off, given) => {
      const reach = Math.min(given, real.B.x / 100, Math.min(real.C.y, real.D.y) / 100);
      expect(check(read(real, off, reach), reach)).toBeUndefined();
    }),
  );
});

it('takes a long narrow piece whose lean makes a diagonal shorter than a side', () => {
  const leaning = { ...rectangleOf(3000, 100), C: { x: 2995, y: 100 }, D: { x: -5, y: 100 } };
  expect(read(leaning).diagonalAC).toBeLessThan(3000);
  expect(check(read(leaning))).toBeUndefined();
});

it('says which reading slipped by a digit or was read in inches', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...lineNames),
      fc.constantFrom(10, 0.1, 25.4, 1 / 25.4),
      fc.integer({ min: 500, max: 2000 }),
      fc.integer({ min: 500, max: 2000 }),
      errors,
      (name, by, length, width, off) => {
        const true6 = read(rectangleOf(length, width), off, 0.5);
        const slipped = { ...true6, [name]: (true6[name] ?? 0) * by };
        expect(slippedDigit(slipped)?.message.text).toContain('about {1} would fit');
        expect(check(slipped)).toMatchObject({ kind: 'problem', field: name });
      },
    ),
  );
});

it('does not guess between two', () => {
  expect(slippedDigit({ front: 1800, back: 180 })).toMatchObject({
    message: { text: expect.stringMatching(/front edge.*back edge|back edge.*front edge/) },
  });
  expect(check({ front: 1800, back: 180 })?.message.text).toContain('Measure both again');
  expect(slippedDigit({ front: 1800, back: 300 })).toBeUndefined();
});

it.each([
  ['too long', { front: 1800, right: 800, diagonalAC: 2600 }, 'diagonalAC', 'longer than both together'],
  ['too short', { front: 1800, left: 800, diagonalBD: 1000 }, 'diagonalBD', 'diagonal {2}, too short'],
  // Six readings: the one without which the rest fit.
  ['an end too long', { ...all, right: 4000 }, 'right', 'Measure the right end again'],
  ['a diagonal too long', { ...all, diagonalBD: 2700 }, 'diagonalBD', 'Measure the diagonal B to D again'],
] as const)('a triangle that cannot be: %s', (what, readings, field, text) => {
  const found = check(readings);
  outside({
    what: `readings with a triangle that can't be (${what}): the field that is named`,
    source: 'geometry',
    at: 'Euclid I.20',
    expected: field,
    got: found?.field,
  });
  expect(found?.message.text).toContain(text);
});

it('five readings that fold over make no panel', () => {
  // C (300, 500) and D (700, 500) have changed places.
  const [long, short] = [Math.hypot(700, 500), Math.hypot(300, 500)];
  expect(check({ front: 1000, right: long, left: long, diagonalAC: short, diagonalBD: short })?.message.text).toContain(
    'no four-cornered piece',
  );
});

const size = { front: 1800, left: 800 };
it.each([
  [{ ...size, front: 0, difference: 0 }, 'front'],
  [{ ...size, left: Number.NaN, difference: 0 }, 'left'],
  [{ front: 1800, difference: 0 }, 'left'],
  [{ ...size, difference: 500 }, 'difference'],
  [{ ...size, diagonalAC: 2700, diagonalBD: 1970 }, 'diagonalAC'],
  [{ ...size, diagonalAC: -1, diagonalBD: 1970 }, 'diagonalAC'],
  [{ front: 180, left: 800, diagonalAC: 1970, diagonalBD: 1970 }, 'front'],
] as const)('names the reading among those of one end %#', (readings, field) => {
  expect(checkMeasured({ readings, farEnd: 'parallel' }, 0.5)).toMatchObject({ kind: 'problem', field });
});

it.each([-0.1, 90, Number.NaN, Number.POSITIVE_INFINITY])('refuses a precision of %f', (within) => {
  expect(check(all, within)).toMatchObject({ kind: 'problem', field: 'precision' });
});
