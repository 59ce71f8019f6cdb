import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lineNames, withoutReading } from '../../../src/core/square/readings.ts';
import { distanceFromRectangle, suspectReading } from '../../../src/core/square/suspect-reading.ts';
import { errors, read, rectangleOf } from './random-pieces.ts';

const all = read(rectangleOf(1800, 800));

it('points at the one reading that was misread', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...lineNames),
      fc.constantFrom(-40, -15, 15, 40),
      fc.integer({ min: 400, max: 2000 }),
      fc.integer({ min: 400, max: 2000 }),
      errors,
      (name, by, length, width, off) => {
        // The others read to 0.1: an end over a front five times longer passes on at most (2 x 5 + 1 + 2 x 5.1) x 0.1.
        const readings = read(rectangleOf(length, width), off, 0.1);
        expect(suspectReading({ ...readings, [name]: (readings[name] ?? 0) + by })).toBe(name);
      },
    ),
  );
});

it('names none where two could be it', () => {
  const long = (all.diagonalAC ?? 0) + 6;
  expect(suspectReading({ ...all, diagonalAC: long, diagonalBD: long })).toBeNull();
  expect(suspectReading(withoutReading(all, 'back'))).toBeNull();
});

it('puts five readings that make no piece out of the running', () => {
  expect(distanceFromRectangle(withoutReading(all, 'back'))).toBeCloseTo(0, 6);
  expect(distanceFromRectangle({ front: 100, right: 100, back: 100, diagonalAC: 300, diagonalBD: 141 })).toBe(
    Number.POSITIVE_INFINITY,
  );
});
