import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import {
  jointSlots,
  needsSlots,
  screwPositions,
  slottedPart,
  usualFixing,
} from '../../../src/screens/movement/joint-slots.ts';
import { type Judged, judge } from '../../../src/screens/movement/read-joint.ts';
import type { Meeting } from '../../../src/store/records/piece.ts';
import { outside } from '../../setup/outside.ts';
import { board, cleat, joint, lid, seasons } from './samples.ts';

const read = (kind: string, first = lid, second = cleat): Judged => {
  const found = judge(joint(kind, first, second), [lid, cleat, board], seasons);
  if (isProblem(found)) throw new Error(found.message.text);
  return found;
};

test('slots are for what crosses: two boards of a seam keep together', () => {
  expect(needsSlots(read('cleat'))).toBe(true);
  expect(needsSlots(read('seam', board, board))).toBe(false);
});

test('the slots are in the cleat whichever part is named first, and in the panel under a breadboard end', () => {
  expect(slottedPart(read('cleat'))).toBe(cleat);
  const cleatFirst = { ...read('cleat', cleat, lid), meets: [...read('cleat').meets].reverse() as [Meeting, Meeting] };
  expect(slottedPart(cleatFirst)).toBe(cleat);
  expect(slottedPart(read('breadboard'))).toBe(lid);
});

test('the slots of a cleat across a lid', () => {
  const fixing = { count: 3, inset: 40, shank: 5, fixed: 1, margin: 1 };
  const slots = jointSlots(read('cleat'), fixing);
  if (isProblem(slots)) throw new Error(slots.message.text);
  expect(slots.value.map(({ position }) => position)).toEqual([40, 215, 390]);
  // 175 mm from the fixed screw, 5 % in all between 6 and 11 %.
  const outer = 5 + 175 * 0.00248 * 5 + 2;
  // Doubles leave only rounding.
  outside({
    what: 'slots of a cleat across a black cherry lid, screws of 5 mm, the outer ones 175 mm from the fixed one: mm',
    source: 'wood-handbook',
    at: 'Table 13-5',
    expected: [outer, 5, outer],
    got: slots.value.map(({ length }) => length),
    tolerance: 5e-10,
  });
});

test('slots lie in the moving panel under a breadboard end: the same length, the other way round', () => {
  const fixing = usualFixing(430);
  const still = jointSlots(read('cleat'), fixing);
  const moving = jointSlots(read('breadboard'), fixing);
  if (isProblem(still) || isProblem(moving)) throw new Error('both answer');
  expect(moving.value[0]?.length).toBeCloseTo(still.value[0]?.length ?? 0, 9);
  expect(moving.value[0]?.towardsFixed).toBeCloseTo(still.value[0]?.awayFromFixed ?? 0, 9);
});

test.each([
  ['an inset beyond the middle', { inset: 300 }, 'positions.1'],
  ['so many screws that the slots meet', { count: 40 }, 'positions.1'],
  ['no screw at all', { count: 0 }, 'count'],
  ['no shank', { shank: 0 }, 'shank'],
  ['a fixed screw that isn’t there', { fixed: 3 }, 'fixed'],
])('%s is refused', (_, change, field) => {
  const found = jointSlots(read('cleat'), { ...usualFixing(430), ...change });
  expect(isProblem(found) && found.field.replace(/\.\d+$/, '.1')).toBe(field);
});

test('a slot longer than the part is wide is refused, with both lengths', () => {
  const short = { ...read('cleat'), contact: { length: 60, breadth: 40 } };
  const found = jointSlots(short, { count: 1, inset: 5, shank: 12, head: 60, fixed: 0, margin: 1 });
  expect(isProblem(found) && found.field).toBe('length');
  expect(isProblem(found) && found.message.quantities).toMatchObject({ 0: { value: 61 }, 1: { value: 60 } });
});

test('screws lie evenly and symmetrically along the seam', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 100, max: 3000 }), (count, length) => {
      const places = screwPositions({ ...usualFixing(length), count }, length);
      expect(places).toHaveLength(count);
      for (const [at, place] of places.entries()) expect(place + (places[count - 1 - at] ?? 0)).toBeCloseTo(length, 6);
    }),
  );
});
