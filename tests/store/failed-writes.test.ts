import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { exportBackup, exportFailedWrites } from '../../src/store/backup/export-backup.ts';
import { readBackup } from '../../src/store/backup/read-backup.ts';
import { boards } from '../../src/store/boards.ts';
import { database } from '../../src/store/db.ts';
import {
  discardFailedWrite,
  type FailedWrite,
  failedWrites,
  onFailedWrites,
  retryFailedWrites,
} from '../../src/store/failed-writes.ts';
import { changeShop, readShop } from '../../src/store/shop.ts';
import { emptyDatabase } from './empty-database.ts';
import { fillPhone } from './fill-phone.ts';
import { put, putMany } from './put.ts';
import { aBoard } from './samples.ts';

beforeEach(emptyDatabase);
afterEach(() => {
  vi.restoreAllMocks();
  vi.useRealTimers();
  vi.unstubAllGlobals();
  for (const { id } of failedWrites()) discardFailedWrite(id);
});

test('a full phone: the write is kept on view, nothing half is stored, and a retry stores it', async () => {
  const [a, b] = await boards.addMany([aBoard({ chalk: 'a' }), aBoard({ chalk: 'b' })]);
  if (!a || !b) throw new Error('nothing added');
  const seen: (readonly FailedWrite[])[] = [];
  const stop = onFailedWrites((list) => seen.push(list));
  const makeRoom = fillPhone();
  await expect(putMany('board', [{ ...a, width: 1 }, b])).rejects.toMatchObject({
    name: 'WriteFailed',
    write: { full: true, message: 'The phone is full.' },
  });
  expect(seen.map((list) => list.length)).toEqual([0, 1]);
  await retryFailedWrites();
  expect(failedWrites()).toMatchObject([{ attempts: 2, full: true }]);
  expect(await boards.get(a.id)).toEqual(a);

  makeRoom();
  await retryFailedWrites();
  expect(failedWrites()).toEqual([]);
  expect(await boards.get(a.id)).toMatchObject({ width: 1, revision: 2 });
  stop();
});

test('a transaction that the browser gives up at the end counts as failed', async () => {
  const real = IDBDatabase.prototype.transaction;
  vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, ...given) {
    const transaction = real.apply(this, given as Parameters<typeof real>);
    if (transaction.mode === 'readwrite') {
      const store = transaction.objectStore('board');
      const put = store.put.bind(store);
      vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation((value) => {
        const request = put(value);
        request.addEventListener('success', () => transaction.abort());
        return request;
      });
    }
    return transaction;
  });
  await expect(boards.add(aBoard({}))).rejects.toMatchObject({ name: 'WriteFailed' });
  vi.restoreAllMocks();
  expect(await boards.all()).toEqual([]);
  expect(failedWrites()).toHaveLength(1);
});

test('a database that stays closed: kept as unavailable, stored once it opens', async () => {
  await database();
  const closed = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(() => {
    throw new DOMException('The connection is closing.', 'InvalidStateError');
  });
  await expect(boards.add(aBoard({ chalk: 'kept' }))).rejects.toMatchObject({
    write: { full: false, message: 'The connection is closing.' },
  });
  closed.mockRestore();
  await retryFailedWrites();
  expect(await boards.all()).toMatchObject([{ chalk: 'kept', revision: 1 }]);
});

test('it is tried again by itself, less and less often', async () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  const makeRoom = fillPhone();
  await expect(boards.add(aBoard({}))).rejects.toThrow();
  const attempts = () => failedWrites()[0]?.attempts;
  await vi.advanceTimersByTimeAsync(2_000);
  await vi.waitFor(() => expect(attempts()).toBe(2));
  await retryFailedWrites().catch(() => {});
  expect(attempts()).toBe(3);
  await vi.advanceTimersByTimeAsync(7_900);
  expect(attempts()).toBe(3);
  makeRoom();
  await vi.advanceTimersByTimeAsync(200);
  await vi.waitFor(() => expect(failedWrites()).toEqual([]));
  expect(await boards.all()).toHaveLength(1);
});

test('a late retry leaves a newer edit alone', async () => {
  const board = await boards.add(aBoard({ note: 'first' }));
  const makeRoom = fillPhone();
  await expect(put('board', { ...board, note: 'lost' })).rejects.toThrow();
  makeRoom();
  await new Promise((resolve) => setTimeout(resolve, 3));
  await put('board', { ...board, note: 'newer' });
  await retryFailedWrites();
  expect(await boards.get(board.id)).toMatchObject({ note: 'newer' });
  expect(failedWrites()).toEqual([]);
});

test('two failed edits of one record are stored in their order', async () => {
  const board = await boards.add(aBoard({ note: 'first' }));
  const makeRoom = fillPhone();
  await expect(put('board', { ...board, note: 'second' })).rejects.toThrow();
  await expect(put('board', { ...board, note: 'third' })).rejects.toThrow();
  makeRoom();
  await retryFailedWrites();
  expect(await boards.get(board.id)).toMatchObject({ note: 'third', revision: 3 });
});

test('an edit that the phone did not take is not undone by the next edit of the record', async () => {
  const { id } = await boards.add(aBoard({ width: 100 }));
  const makeRoom = fillPhone();
  await expect(boards.change(id, (board) => ({ ...board, note: 'pitch pocket' }))).rejects.toThrow();
  makeRoom();
  await new Promise((resolve) => setTimeout(resolve, 3));
  await boards.change(id, (board) => ({ ...board, width: 99 }));
  await retryFailedWrites();
  expect(await boards.get(id)).toMatchObject({ note: 'pitch pocket', width: 99 });

  // The same when neither is taken at first.
  const makeRoomAgain = fillPhone();
  await expect(boards.change(id, (board) => ({ ...board, note: 'knot' }))).rejects.toThrow();
  await expect(boards.change(id, (board) => ({ ...board, width: 98 }))).rejects.toThrow();
  makeRoomAgain();
  await retryFailedWrites();
  expect(await boards.get(id)).toMatchObject({ note: 'knot', width: 98 });
});

test('the first two edits of a fresh shop that a full phone did not take both stay', async () => {
  const makeRoom = fillPhone();
  await expect(changeShop((shop) => ({ ...shop, tapePrecision: 1 }))).rejects.toThrow();
  await expect(changeShop((shop) => ({ ...shop, hand: 'left' }))).rejects.toThrow();
  makeRoom();
  await retryFailedWrites();
  expect(await readShop()).toMatchObject({ tapePrecision: 1, hand: 'left' });
});

test('an edit that the phone did not take is stored also where the clock was ahead when the record was last written', async () => {
  const clock = vi.spyOn(Date, 'now').mockReturnValue(Date.now() + 365 * 86_400_000);
  const { id } = await boards.add(aBoard({}));
  clock.mockRestore();
  const makeRoom = fillPhone();
  for (const note of ['knot', 'pitch pocket'])
    await expect(boards.change(id, (board) => ({ ...board, note }))).rejects.toThrow();
  makeRoom();
  await retryFailedWrites();
  expect(await boards.get(id)).toMatchObject({ note: 'pitch pocket' });
});

test('what failed goes out with the backup, and alone when nothing can be read', async () => {
  const board = await boards.add(aBoard({ chalk: 'old' }));
  const makeRoom = fillPhone();
  await expect(put('board', { ...board, chalk: 'new' })).rejects.toThrow();
  for (const { text } of [await exportBackup(), await exportFailedWrites()]) {
    expect(await readBackup(text)).toMatchObject({
      kind: 'read',
      altered: false,
      contents: { kinds: { board: [{ id: board.id, chalk: 'new', revision: 2 }] } },
    });
  }
  makeRoom();
});

test('a killed tab finds its failed writes again', async () => {
  const room = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => room.get(key) ?? null,
    setItem: (key: string, value: string) => room.set(key, value),
    removeItem: (key: string) => room.delete(key),
  });
  const makeRoom = fillPhone();
  await expect(boards.add(aBoard({ chalk: 'typed' }))).rejects.toThrow();
  makeRoom();
  vi.resetModules();
  const again = await import('../../src/store/failed-writes.ts');
  expect(again.failedWrites()).toMatchObject([{ changes: [{ put: { chalk: 'typed' } }] }]);
  await again.retryFailedWrites();
  expect([...room.values()]).toEqual(['[]']);
  const { closeDatabase } = await import('../../src/store/db.ts');
  await closeDatabase();
  expect(await boards.all()).toMatchObject([{ chalk: 'typed' }]);
});
