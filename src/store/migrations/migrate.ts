import { type IDBPDatabase, type IDBPTransaction, openDB } from 'idb';
import { abortUpgrade } from '../abort-upgrade.ts';
import { keepSnapshot } from '../backup/snapshots.ts';
import { contentsAsTheyAre } from '../backup/stored-contents.ts';
import { databaseName } from '../db.ts';
import { kindsAmong, readContents } from '../read-contents.ts';
import { refill } from '../refill.ts';
import { convert } from './convert.ts';
import type { Migration } from './migration.ts';

/**
 * Brings a stored database to the last version of `migrations`. First a snapshot of what is there is kept, and the
 * conversion is tried on a copy; only then the upgrade runs, in one transaction. Whatever fails, the old data stays.
 */
export async function migrate(migrations: readonly Migration[], blocked: () => void): Promise<void> {
  const { contents, schema: from } = await contentsAsTheyAre();
  await keepSnapshot({ contents, schema: from, reason: 'migration', at: Date.now() });
  convert(structuredClone(contents), from, migrations);

  let failure: unknown;
  const opening = openDB(databaseName, migrations.at(-1)?.to, {
    blocked,
    upgrade(database, _from, _to, transaction) {
      upgrade(database, transaction, from, migrations).catch((error) => {
        failure = error;
        abortUpgrade(transaction);
      });
    },
  });
  try {
    (await opening).close();
  } catch (error) {
    throw failure ?? error;
  }
}

/** The real run, on what is stored by now: the copy may be older than the last write of another tab. */
async function upgrade(
  database: IDBPDatabase,
  transaction: IDBPTransaction<unknown, string[], 'versionchange'>,
  from: number,
  migrations: readonly Migration[],
): Promise<void> {
  const contents = await readContents(transaction);
  for (const step of migrations) if (step.to > from) step.shape(database, transaction);
  const after = convert(contents, from, migrations);
  for (const kind of kindsAmong(database.objectStoreNames)) {
    await refill(transaction.objectStore(kind), after.kinds[kind] ?? []);
  }
}
