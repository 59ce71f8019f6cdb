import { expect, test } from 'vitest';
import { warpByTools, withWarp } from '../../../src/screens/stock/warp-by-tools.ts';
import type { Board } from '../../../src/store/records/board.ts';

const board: Board = {
  id: 'b',
  created: 0,
  updated: 0,
  revision: 1,
  chalk: 'C1',
  species: 'cherry-black',
  thickness: { quarters: 4 },
  width: 200,
  length: 2400,
  state: 'rack',
};
const straightedge = { tool: 'long edge', error: 0.9, length: 600 };
const sticks = { tool: 'oak sticks', error: 0.6, length: 600 };

test('without a tested tool the warp is what was seen', () => {
  expect(withWarp(board, { cup: 2, bow: 5, crook: 3 }, {}).warp).toEqual({ cup: 2, bow: 5, crook: 3 });
});

test('a straightedge puts right what it spans, sticks the twist; what is seen stays as it was typed', () => {
  const next = withWarp(board, { cup: 2, bow: 5, crook: 3, twist: 3 }, { straightedge, sticks });
  // By hand: 0.9 x (200 / 600)² = 0.1; (3 + 0.6) x 200 / 600 = 1.2. The bow is longer than the edge: a string told it.
  expect(next.warp).toEqual({ cup: expect.closeTo(2.1, 9), bow: 5, crook: 3, twist: expect.closeTo(1.2, 9) });
  expect(next.seen).toEqual({ cup: 2, bow: 5, crook: 3, twist: 3 });
  expect(Object.keys(warpByTools(next))).toEqual(['cup', 'twist']);
  // The tool put away again: as seen.
  expect(withWarp(next, next.seen ?? {}, {}).warp).toEqual(next.seen);
});
