import { forceCloseDatabase } from 'fake-indexeddb';
import { openDB, unwrap } from 'idb';
import { beforeEach, expect, test } from 'vitest';
import { boards } from '../../src/store/boards.ts';
import { type DatabaseState, database, databaseName, onDatabase } from '../../src/store/db.ts';
import { discardFailedWrite, failedWrites } from '../../src/store/failed-writes.ts';
import { schemaVersion } from '../../src/store/migrations/list.ts';
import { kinds } from '../../src/store/records/kinds.ts';
import { emptyDatabase } from './empty-database.ts';
import { put } from './put.ts';
import { aBoard } from './samples.ts';

beforeEach(emptyDatabase);

function heard(): { states: DatabaseState[]; stop: () => void } {
  const states: DatabaseState[] = [];
  return { states, stop: onDatabase((state) => states.push(state)) };
}

test('a first start makes every store', async () => {
  const { states, stop } = heard();
  const stores = [...(await database()).objectStoreNames].sort();
  expect(stores).toEqual([...kinds, 'draft', 'meta', 'removed'].sort());
  expect(states).toEqual(['closed', 'opening', 'open']);
  stop();
});

test('when a newer schema appears this tab lets it through, says so, and writes no more', async () => {
  const board = await boards.add(aBoard({}));
  const { states, stop } = heard();
  const newer = await openDB(databaseName, schemaVersion + 1);
  expect(states).toEqual(['open', 'superseded']);
  await expect(put('board', { ...board, width: 1 })).rejects.toMatchObject({ name: 'WriteFailed' });
  expect(await newer.get('board', board.id)).toEqual(board);
  expect(failedWrites()).toMatchObject([{ full: false, changes: [{ put: { width: 1 } }] }]);
  for (const { id } of failedWrites()) discardFailedWrite(id);
  newer.close();
  stop();
});

test('an app older than the stored schema says so and touches nothing', async () => {
  (await openDB(databaseName, schemaVersion + 5)).close();
  const { states, stop } = heard();
  await expect(database()).rejects.toMatchObject({ name: 'DatabaseUnavailable', state: 'superseded' });
  expect(states.at(-1)).toBe('superseded');
  const still = await openDB(databaseName);
  expect(still.version).toBe(schemaVersion + 5);
  still.close();
  stop();
});

test('a connection that the browser ends is opened again at the next use', async () => {
  const board = await boards.add(aBoard({}));
  const { states, stop } = heard();
  forceCloseDatabase(unwrap(await database()) as never);
  await expect.poll(() => states).toEqual(['open', 'terminated']);
  expect(await boards.get(board.id)).toEqual(board);
  expect(states).toEqual(['open', 'terminated', 'opening', 'open']);
  stop();
});

test('a connection that is closed without a word is opened again too', async () => {
  const board = await boards.add(aBoard({}));
  (await database()).close();
  expect(await put('board', { ...board, width: 77 })).toMatchObject({ width: 77 });
  (await database()).close();
  expect(await boards.all()).toHaveLength(1);
});

test('and by all who read at that moment, with one connection', async () => {
  const board = await boards.add(aBoard({}));
  (await database()).close();
  const { states, stop } = heard();
  const reads = Array.from({ length: 8 }, async (_, turn) => {
    for (let wait = 0; wait < turn; wait++) await undefined;
    return boards.get(board.id);
  });
  expect(await Promise.all(reads)).toEqual(Array(8).fill(board));
  expect(states).toEqual(['open', 'closed', 'opening', 'open']);
  stop();
});

test('a database deleted under the app is let go, said, and made anew', async () => {
  await boards.add(aBoard({}));
  const { states, stop } = heard();
  await new Promise((resolve, reject) => {
    const deletion = indexedDB.deleteDatabase(databaseName);
    deletion.onsuccess = resolve;
    deletion.onerror = reject;
  });
  expect(states).toEqual(['open', 'erased']);
  expect(await boards.all()).toEqual([]);
  stop();
});
