import { deleteDB, type IDBPDatabase, openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { firstSchema } from '../../../src/store/migrations/001-first-schema.ts';
import type { Migration } from '../../../src/store/migrations/migration.ts';
import { emptyDatabase } from '../empty-database.ts';
import { sampleContents } from '../samples.ts';

/** An invented next version: millimetres become tenths, notes get a store of their own. */
const second: Migration = {
  to: 2,
  shape: (database) => void database.createObjectStore('note', { keyPath: 'id' }),
  convert: ({ kinds, removed }) => {
    const boards = (kinds.board ?? []) as unknown as { id: string; width: number; note?: string }[];
    return {
      kinds: {
        ...kinds,
        board: boards.map(({ note: _, ...board }) => ({ ...board, width: board.width * 10 })) as never[],
        note: boards.map(({ id, note }) => ({ id, text: note })) as never[],
      },
      removed,
    };
  },
};

const failing: Migration = {
  ...second,
  convert: () => {
    throw new Error('met what it does not know');
  },
};

beforeEach(emptyDatabase);
afterEach(() => {
  vi.doUnmock('../../../src/store/migrations/list.ts');
  vi.resetModules();
});

/** The app as a later release, whose list of migrations has grown. */
async function release(migrations: readonly Migration[]) {
  vi.resetModules();
  vi.doMock('../../../src/store/migrations/list.ts', () => ({ migrations, schemaVersion: migrations.length }));
  const db = await import('../../../src/store/db.ts');
  const snapshots = await import('../../../src/store/backup/snapshots.ts');
  const { exportBackup } = await import('../../../src/store/backup/export-backup.ts');
  return { ...db, ...snapshots, exportBackup };
}

async function storeFirstVersion(): Promise<IDBPDatabase> {
  const old = await openDB('boardwright', 1, { upgrade: (fresh, _from, _to, tx) => firstSchema.shape(fresh, tx) });
  const { kinds, removed } = sampleContents();
  for (const [kind, records] of Object.entries(kinds)) for (const record of records) await old.put(kind, record);
  for (const tombstone of removed) await old.put('removed', tombstone);
  await old.put('draft', { value: '5 3/', at: 0 }, 'board-form-1');
  return old;
}

describe('a database of an older version', () => {
  test('is converted, with a snapshot of what it was', async () => {
    (await storeFirstVersion()).close();
    const app = await release([firstSchema, second]);
    const states: string[] = [];
    app.onDatabase((state) => states.push(state));
    const database = await app.database();
    expect(states).toEqual(['closed', 'opening', 'migrating', 'open']);
    expect(database.version).toBe(2);
    expect(await database.getAll('board')).toMatchObject([{ id: 'board-1', width: 1800 }]);
    expect(await database.getAll('note')).toEqual([{ id: 'board-1', text: 'sapwood on one edge' }]);
    expect(await database.getAll('piece')).toEqual(sampleContents().kinds.piece);
    expect(await database.getAll('removed')).toHaveLength(1);
    expect(await database.get('draft', 'board-form-1')).toMatchObject({ value: '5 3/' });

    const [snapshot] = await app.listSnapshots();
    expect(snapshot).toMatchObject({ reason: 'migration', schema: 1, counts: { board: 1, piece: 1 } });
    const kept = JSON.parse((await app.snapshotText(snapshot?.id ?? '')) ?? '');
    expect(kept).toMatchObject({ schema: 1, kinds: { board: sampleContents().kinds.board } });
    await app.closeDatabase();
  });

  test('stays as it was when the conversion fails, and can be exported', async () => {
    (await storeFirstVersion()).close();
    const app = await release([firstSchema, failing]);
    await expect(app.database()).rejects.toMatchObject({ state: 'migrationFailed' });
    // It doesn't try again with every read.
    await expect(app.database()).rejects.toMatchObject({ name: 'DatabaseUnavailable' });
    expect(await app.listSnapshots()).toHaveLength(1);

    const file = JSON.parse((await app.exportBackup()).text);
    expect(file).toMatchObject({ schema: 1, kinds: sampleContents().kinds });

    const old = await release([firstSchema]);
    const database = await old.database();
    expect(await database.getAll('board')).toEqual(sampleContents().kinds.board);
    await old.closeDatabase();
  });

  test('stays as it was when only the real run fails', async () => {
    (await storeFirstVersion()).close();
    let runs = 0;
    const app = await release([
      firstSchema,
      {
        ...second,
        convert: (contents) => {
          runs += 1;
          if (runs === 2) throw new Error('on the second run');
          return contents;
        },
      },
    ]);
    await expect(app.database()).rejects.toMatchObject({
      state: 'migrationFailed',
      cause: { message: 'on the second run' },
    });
    const old = await openDB('boardwright');
    expect(old.version).toBe(1);
    expect(await old.getAll('board')).toEqual(sampleContents().kinds.board);
    old.close();
  });

  test('that another tab holds open waits for it and says so', async () => {
    const otherTab = await storeFirstVersion();
    const app = await release([firstSchema, second]);
    const blocked = new Promise((resolve) => app.onDatabase((state) => state === 'blocked' && resolve(state)));
    const opening = app.database();
    await blocked;
    otherTab.close();
    expect((await opening).version).toBe(2);
    await app.closeDatabase();
    await deleteDB('boardwright');
  });
});
