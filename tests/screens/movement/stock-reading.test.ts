import { beforeEach, expect, test } from 'vitest';
import { readStock } from '../../../src/screens/movement/stock-reading.ts';
import { boards } from '../../../src/store/boards.ts';
import type { Board } from '../../../src/store/records/board.ts';
import { emptyDatabase } from '../../store/empty-database.ts';
import { aBoard } from '../../store/samples.ts';
import { lid } from './samples.ts';

beforeEach(emptyDatabase);

const chest = { id: 'chest', parts: [lid] };
const log = (chalk: string, readings: readonly [at: number, percent: number][], given: Partial<Board> = {}) =>
  boards.add(aBoard({ chalk, readings: readings.map(([at, percent]) => ({ at, percent })), ...given }));

test('nothing was read yet', async () => {
  expect(await readStock(chest)).toBeNull();
  await log('A', []);
  expect(await readStock(chest)).toBeNull();
});

test('without boards of its own, the newest reading of its woods in the rack', async () => {
  await log('A', [
    [3, 9],
    [1, 12],
  ]);
  await log('B', [[2, 8]]);
  await log('C', [[9, 7]], { species: 'teak' });
  await log('D', [[9, 6]], { state: 'used' });
  expect(await readStock(chest)).toEqual({ at: 3, percent: 9, board: 'rack, board A' });
});

test('a board set aside for it goes before newer ones that are not', async () => {
  await log('A', [[9, 12]]);
  await log('B', [[2, 8]], { state: 'setAside', pieceId: 'chest' });
  await log('C', [[9, 6]], { state: 'setAside', pieceId: 'table', species: 'teak' });
  expect(await readStock(chest)).toEqual({ at: 2, percent: 8, board: 'board B' });
});

test('a reading is corrected for the temperature at which it was taken', async () => {
  await boards.add(aBoard({ readings: [{ at: 1, percent: 10, celsius: 5 }] }));
  // A cold board reads too low (Wood handbook, FPL-GTR-190, chapter 4, on electric meters).
  expect((await readStock(chest))?.percent).toBeGreaterThan(10);
});
