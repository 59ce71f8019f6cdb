import { readdirSync, readFileSync } from 'node:fs';
import { openDB } from 'idb';
import { beforeEach, describe, expect, test } from 'vitest';
import type { BackupFile } from '../../../src/store/backup/backup-text.ts';
import { readBackup } from '../../../src/store/backup/read-backup.ts';
import { storedContents } from '../../../src/store/backup/stored-contents.ts';
import { migrations, schemaVersion } from '../../../src/store/migrations/list.ts';
import { emptyDatabase } from '../empty-database.ts';

/** One file per schema version that was ever released, never changed after: a backup of a shop of that version. */
const folder = new URL('../fixtures/', import.meta.url);
const fixtures = readdirSync(folder)
  .filter((name) => /^v\d+\.json$/.test(name))
  .map((name) => {
    const text = readFileSync(new URL(name, folder), 'utf8');
    return { name, text, file: JSON.parse(text) as BackupFile };
  });

beforeEach(emptyDatabase);

test('the steps are numbered without a gap, and every version has its fixture', () => {
  expect(migrations.map(({ to }) => to)).toEqual(migrations.map((_, at) => at + 1));
  expect(fixtures.map(({ file }) => file.schema).sort()).toEqual(migrations.map(({ to }) => to));
});

describe.each(fixtures)('$name', ({ text, file }) => {
  test('as a database opens and every record in it is sound', async () => {
    const old = await openDB('boardwright', file.schema, {
      upgrade(fresh, _from, _to, tx) {
        for (const step of migrations.slice(0, file.schema)) step.shape(fresh, tx);
      },
    });
    for (const [kind, records] of Object.entries(file.kinds)) for (const record of records) await old.put(kind, record);
    old.close();
    const { contents, schema } = await storedContents();
    expect(schema).toBe(schemaVersion);
    const count = (kinds: BackupFile['kinds']) => Object.values(kinds).flat().length;
    expect(count(contents.kinds)).toBeGreaterThanOrEqual(count(file.kinds));
  });

  test('as a backup is read without damage', async () => {
    const outcome = await readBackup(text);
    expect(outcome).toMatchObject({ kind: 'read', damaged: [], altered: false });
  });
});
