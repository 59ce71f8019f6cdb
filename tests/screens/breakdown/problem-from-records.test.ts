import { describe, expect, test } from 'vitest';
import { planBreaches } from '../../../src/core/breakdown/plan-validity.ts';
import { problemFromRecords, usableFor } from '../../../src/screens/breakdown/problem-from-records.ts';
import { board, part, piece, shop, solve } from './samples.ts';

const lid = piece([part('lid')]);

describe('what is asked of the planner', () => {
  test('boards of the rack and those set aside for this piece, no others', () => {
    const all = [
      board('a'),
      board('b', { state: 'setAside', pieceId: 'chest' }),
      board('c', { state: 'setAside', pieceId: 'another' }),
      board('d', { state: 'cut' }),
      board('e', { state: 'used' }),
    ];
    expect(usableFor(lid, all).map(({ id }) => id)).toEqual(['a', 'b']);
  });

  test('in the order in which they were logged, so that neighbours are neighbours', () => {
    const all = [board('a', { created: 30 }), board('b', { created: 10 }), board('c', { created: 20 })];
    expect(usableFor(lid, all).map(({ id }) => id)).toEqual(['b', 'c', 'a']);
  });

  test('a board without warp gets the assumed one: 2 mm on 200 and 6 mm on 2400', () => {
    // One hundredth of the width and one four-hundredth of the length: the stated assumption.
    const [rough] = problemFromRecords(shop, [board('a', { warp: {} })], lid).boards;
    expect(rough).toMatchObject({ cup: 2, bow: 6 });
  });

  test('a board that tapers from 240 to 200 is stepped, each step as wide as its narrow end', () => {
    // Geometry: blanks of 950 fit twice into 2400, so two steps of 1200; the taper passes 220 half way.
    const [rough] = problemFromRecords(shop, [board('a', { width: 240, farWidth: 200 })], lid).boards;
    expect(rough?.width).toBe(240);
    expect(rough?.clear).toEqual([
      { start: 0, length: 1200, offset: 0, width: 220 },
      { start: 1200, length: 1200, offset: 0, width: 200 },
    ]);
  });

  test('a step never gets too short for the longest part', () => {
    const long = piece([part('lid', { length: 1500 }), part('end', { length: 300 })]);
    const [rough] = problemFromRecords(shop, [board('a', { width: 240, farWidth: 200 })], long).boards;
    expect(rough?.clear).toHaveLength(1);
  });

  test('blanks stay clear of a knot in the middle of the board', () => {
    const knot = { start: 1000, length: 100, offset: 0, width: 200, kind: 'knot' };
    const asked = problemFromRecords(shop, [board('a', { defects: [knot] }), board('b')], lid);
    expect(asked.boards[0]?.clear).toEqual([
      { start: 0, length: 1000, offset: 0, width: 200 },
      { start: 1100, length: 1300, offset: 0, width: 200 },
    ]);
    const plan = solve(asked);
    expect(planBreaches(asked, plan)).toEqual([]);
    for (const { board: id, start, length } of plan.blanks)
      if (id === 'a') expect(start >= 1100 || start + length <= 1000).toBe(true);
  });

  test('wishes about boards and parts that are gone are left out, the others stay', () => {
    const wishes = {
      keepOut: ['a', 'gone'],
      fix: [
        { part: 'lid', board: 'b' },
        { part: 'lid', board: 'gone' },
        { part: 'gone', board: 'b' },
      ],
      together: [
        { part: 'lid', boards: 1 },
        { part: 'gone', boards: 1 },
      ],
      show: ['gone', 'lid'],
      fewerSeams: true,
    };
    expect(problemFromRecords(shop, [board('a'), board('b')], lid, wishes).wishes).toEqual({
      keepOut: ['a'],
      fix: [{ part: 'lid', board: 'b' }],
      together: [{ part: 'lid', boards: 1 }],
      show: ['lid'],
      fewerSeams: true,
    });
  });

  test('a good face is passed on, and nothing where there is none', () => {
    const asked = problemFromRecords(shop, [board('a', { goodFace: true }), board('b')], lid);
    expect(asked.boards.map(({ goodFace }) => goodFace)).toEqual([true, undefined]);
  });

  test("the sled lifts the jointer's limit where there is one; without either a hand plane flattens", () => {
    const { machines } = shop;
    const by = (owned: boolean, sled: boolean) => {
      const changed = { jointer: { ...machines.jointer, owned }, planer: { ...machines.planer, sled } };
      return problemFromRecords({ ...shop, machines: { ...machines, ...changed } }, [], lid).shop.flattenBy;
    };
    expect([by(true, false), by(true, true)]).toEqual([undefined, 'planer-sled']);
    expect([by(false, false), by(false, true)]).toEqual(['hand-plane', 'planer-sled']);
    const handPlanes = { owned: true, wide: true };
    expect(problemFromRecords({ ...shop, machines: { ...machines, handPlanes } }, [], lid).shop.flattenBy).toBe(
      'hand-plane',
    );
  });
});

test('of a board with more marks than can be gone around nothing counts as clear', () => {
  const mark = { start: 100, length: 10, offset: 20, width: 10, kind: 'knot' };
  const asked = problemFromRecords(shop, [board('a', { defects: Array(101).fill(mark) })], piece([part('lid')]));
  expect(asked.boards[0]?.clear).toEqual([]);
});
