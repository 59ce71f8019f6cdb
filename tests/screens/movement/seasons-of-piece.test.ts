import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { climateOf, presetOf } from '../../../src/screens/movement/climate-of.ts';
import { seasonsOfPiece } from '../../../src/screens/movement/seasons-of-piece.ts';
import { dayOfYear, placeInYear } from '../../../src/screens/movement/year-path.ts';
import type { Piece } from '../../../src/store/records/piece.ts';
import { climates } from '../../../src/tables/climates.ts';
import { outside } from '../../setup/outside.ts';

const piece: Piece = { id: 'p', created: 0, updated: 0, revision: 1, name: 'chest', parts: [], joints: [], stages: [] };
const shop = { climate: { dry: { celsius: 21.1, humidity: 35 }, damp: { celsius: 21.1, humidity: 65 } } };

test('moisture of the seasons comes from the shop’s air, today’s from the reading', () => {
  const found = seasonsOfPiece({ ...piece, reading: { at: 0, percent: 9.5 } }, shop, null, 0);
  if (isProblem(found)) throw new Error(found.message.text);
  expect(found.value.today).toBe(9.5);
  // Printed to 0.1.
  outside({
    what: 'a shop at 35 % to 65 % relative humidity and 70 F: moisture of the seasons, %',
    source: 'wood-handbook-memory',
    at: 'Table 4-2',
    expected: [6.9, 12],
    got: [found.value.dry, found.value.wet],
    tolerance: 0.05,
  });
});

test('without a reading the wood is taken at what most rooms hold', () => {
  const found = seasonsOfPiece(piece, shop, null, 0);
  expect(isProblem(found) ? found : found.value.today).toBe(8);
});

test('unread wood is where the shop’s air takes it, and the working says so; a reading of the wood itself goes before', () => {
  const airy = { ...shop, air: [{ at: 0, celsius: 21.1, humidity: 50 }] };
  const found = seasonsOfPiece(piece, airy, null, 0);
  if (isProblem(found)) throw new Error(found.message.text);
  // Wood handbook (FPL-GTR-190), Table 4-2 at 70 °F: 9.2 % at 50 %; recalled, printed to 0.1.
  expect(Math.abs(found.value.today - 9.2)).toBeLessThan(0.1);
  expect(found.working.steps.map(({ finds }) => finds)).toContain('moisture today, by the shop’s air');
  expect(seasonsOfPiece({ ...piece, reading: { at: 0, percent: 7 } }, airy, null, 0)).toMatchObject({
    value: { today: 7 },
  });
});

test('air that was read last year says nothing of today: what most rooms hold is taken', () => {
  const airy = { ...shop, air: [{ at: 0, celsius: 21.1, humidity: 65 }] };
  const day = 86_400_000;
  expect(seasonsOfPiece(piece, airy, null, 30 * day)).toMatchObject({
    value: { from: expect.stringContaining('1970') },
  });
  expect(seasonsOfPiece(piece, airy, null, 365 * day)).toMatchObject({ value: { today: 8, from: 'assumed' } });
});

test('the newest of what was typed in and what the stock read is today’s, and says where it comes from', () => {
  const today = (typedAt: number | undefined, readAt: number | undefined) => {
    const reading = typedAt === undefined ? {} : { reading: { at: typedAt, percent: 9.5 } };
    const stock = readAt === undefined ? null : { at: readAt, percent: 7.1, board: 'board C3' };
    const found = seasonsOfPiece({ ...piece, ...reading }, shop, stock, 0);
    return isProblem(found) ? undefined : ([found.value.today, found.value.from.split(',')[0]] as const);
  };
  expect(today(undefined, 5)).toEqual([7.1, 'board C3']);
  expect(today(4, 5)).toEqual([7.1, 'board C3']);
  expect(today(6, 5)).toEqual([9.5, 'as typed']);
  expect(today(undefined, undefined)).toEqual([8, 'assumed']);
});

test('seasons the wrong way round are a problem', () => {
  const turned = { climate: { dry: shop.climate.damp, damp: shop.climate.dry } };
  expect(isProblem(seasonsOfPiece(piece, turned, null, 0))).toBe(true);
});

test('a piece starts at the first preset or the shop’s place, has its own from then on, and each preset is known again', () => {
  expect(presetOf(climateOf({}, {}))).toBe(climates[0]?.id);
  for (const { id, dry, wet } of climates) {
    const climate = { dry, damp: wet };
    expect(presetOf(climateOf({}, { climate }))).toBe(id);
    expect(presetOf(climateOf({ climate }, shop))).toBe(id);
  }
  expect(presetOf(climateOf({}, shop))).toBe('');
});

test('the chart fills its frame, and a part that keeps still is a level line', () => {
  const frame = { left: 0, right: 100, top: 10, bottom: 60 };
  const at = (day: number, width: number) => ({ day, percent: 8, width });
  const place = placeInYear([at(0, 400), at(365, 404)], frame);
  expect(place(at(0, 400))).toEqual({ x: 0, y: 60 });
  expect(place(at(365, 404))).toEqual({ x: 100, y: 10 });
  expect(placeInYear([at(0, 400), at(365, 400)], frame)(at(0, 400)).y).toBe(35);
});

test('days count from 1 January, past the change of clocks and in leap years', () => {
  expect(dayOfYear(new Date(2025, 0, 1, 23))).toBe(0);
  expect(dayOfYear(new Date(2025, 7, 15, 1))).toBe(226);
  expect(dayOfYear(new Date(2024, 11, 31, 12))).toBe(365);
});
