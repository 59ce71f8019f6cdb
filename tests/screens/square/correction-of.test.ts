import { describe, expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import type { Readings } from '../../../src/core/square/readings.ts';
import { squareness } from '../../../src/core/square/squareness.ts';
import { correctionOf } from '../../../src/screens/square/correction-of.ts';
import { arrowsOf } from '../../../src/screens/square/outline-of.ts';

function found(readings: Readings, precision = 0.5) {
  const answer = squareness({ readings }, precision);
  if (isProblem(answer)) throw new Error(answer.message.text);
  return answer.value;
}

/** Both ends lean 5 towards the right: diagonals by Pythagoras (Euclid I.47). */
const racked = found({
  front: 1000,
  right: Math.hypot(5, 500),
  back: 1000,
  left: Math.hypot(5, 500),
  diagonalAC: Math.hypot(1005, 500),
  diagonalBD: Math.hypot(995, 500),
});

describe('a racked panel', () => {
  test('with a line to cut: both back ends go 5 to the left, each said once', () => {
    const correction = correctionOf(racked, 'line', 0.2);
    expect(correction).toMatchObject({
      kind: 'cuts',
      cuts: [
        { value: { hand: 'right', move: { corner: 'C', other: 'D', towards: true, distance: expect.closeTo(5, 3) } } },
        { value: { hand: 'left', move: { corner: 'D', other: 'C', towards: false, distance: expect.closeTo(5, 3) } } },
      ],
    });
    expect(arrowsOf(correction).map(({ corner, towards }) => [corner, towards])).toEqual([
      ['C', true],
      ['D', false],
    ]);
  });

  test('sawn already: at the left the front end comes in, since no wood is left at the back', () => {
    expect(correctionOf(racked, 'sawn', 0.2)).toMatchObject({
      cuts: [{ value: { move: { corner: 'C' } } }, { value: { move: { corner: 'A', other: 'B', towards: true } } }],
    });
  });

  test('in clamps: the long diagonal is squeezed, from both its ends', () => {
    const correction = correctionOf(racked, 'clamps', 0.2);
    // Parallelogram law: the squares of the diagonals add up to those of the sides, so square is sqrt((AC² + BD²) / 2).
    const square = Math.sqrt((1005 ** 2 + 995 ** 2) / 2 + 500 ** 2);
    expect(correction).toMatchObject({
      kind: 'squeeze',
      clamps: { value: { squeeze: 'diagonalAC', square: expect.closeTo(square, 3) } },
    });
    expect(arrowsOf(correction).map(({ corner }) => corner)).toEqual(['A', 'C']);
  });
});

test('a panel with one end out moves only that one', () => {
  const one = found({
    front: 1000,
    right: Math.hypot(4, 500),
    back: 1004,
    left: 500,
    diagonalAC: Math.hypot(1004, 500),
    diagonalBD: Math.hypot(1000, 500),
  });
  expect(correctionOf(one, 'line', 0.2)).toMatchObject({ cuts: [{ value: { hand: 'right' } }] });
  // No clamp cures unequal sides, and it says so.
  expect(correctionOf(one, 'clamps', 0.2)).toMatchObject({ kind: 'say' });
});

test.each([
  ['square', { front: 300, right: 400, back: 300, left: 400, diagonalAC: 500, diagonalBD: 500 }],
  ['not measured enough', { front: 300, right: 400, diagonalAC: 510 }],
  ['contradicting', { front: 300, right: 400, back: 300, left: 400, diagonalAC: 500, diagonalBD: 512 }],
] as const)('%s: the core’s own words, and no arrow', (_, readings) => {
  for (const situation of ['line', 'sawn', 'clamps'] as const) {
    const of = found(readings);
    const correction = correctionOf(of, situation, 0.2);
    expect(correction).toEqual({ kind: 'say', say: of.say });
    expect(arrowsOf(correction)).toEqual([]);
  }
});

test('racked beyond doubt, but with a reading that can’t be: measure again before any clamp is touched', () => {
  const of = found({
    front: 1000,
    right: Math.hypot(50, 500),
    back: 1000,
    left: Math.hypot(50, 500),
    diagonalAC: Math.hypot(1050, 500) + 3,
    diagonalBD: Math.hypot(950, 500),
  });
  expect([of.shape, of.closing.consistent]).toEqual(['racked', false]);
  expect(correctionOf(of, 'clamps', 0.2)).toEqual({ kind: 'say', say: of.say });
});
