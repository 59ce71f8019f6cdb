import { openDB } from 'idb';
import { abortUpgrade } from '../abort-upgrade.ts';
import type { Contents } from '../contents.ts';
import { DatabaseUnavailable, databaseName } from '../db.ts';
import { schemaVersion } from '../migrations/list.ts';
import { readContents } from '../read-contents.ts';
import { kinds } from '../records/kinds.ts';
import { transact } from '../transact.ts';

/** Everything that is stored, with the version of its schema: also when this app can't use that version. */
export async function storedContents(): Promise<{ contents: Contents; schema: number }> {
  try {
    return { contents: await transact([...kinds, 'removed'], 'readonly', readContents), schema: schemaVersion };
  } catch (error) {
    if (error instanceof DatabaseUnavailable) return contentsAsTheyAre();
    throw error;
  }
}

/** Everything that is stored, in whatever version it is. */
export async function contentsAsTheyAre(): Promise<{ contents: Contents; schema: number }> {
  const connection = await openDB(databaseName, undefined, {
    // Nothing there: reading must not leave an empty database behind.
    upgrade: (_database, _from, _to, transaction) => abortUpgrade(transaction),
    blocking: (_from, _wanted, event) => (event.target as IDBDatabase).close(),
  });
  try {
    const contents = await readContents(connection.transaction([...connection.objectStoreNames], 'readonly'));
    return { contents, schema: connection.version };
  } finally {
    connection.close();
  }
}
