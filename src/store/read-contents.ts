import type { IDBPTransaction } from 'idb';
import type { Contents, Tombstone } from './contents.ts';
import { allInPages } from './read-in-pages.ts';
import type { StoredRecord } from './records/record.ts';

/** Stores that hold no records of the maker's. */
const notKinds = new Set(['draft', 'meta', 'removed']);

export const kindsAmong = (stores: Iterable<string>): string[] => [...stores].filter((name) => !notKinds.has(name));

/** Everything in the stores of a transaction, whatever the schema version. */
export async function readContents(
  transaction: IDBPTransaction<unknown, string[], IDBTransactionMode>,
): Promise<Contents> {
  const names = kindsAmong(transaction.objectStoreNames);
  const [removed, ...records] = await Promise.all([
    transaction.objectStoreNames.contains('removed') ? transaction.objectStore('removed').getAll() : [],
    ...names.map((name) => allInPages<StoredRecord>(transaction.objectStore(name))),
  ]);
  return {
    kinds: Object.fromEntries(names.map((name, at) => [name, records[at] ?? []])),
    removed: removed as Tombstone[],
  };
}
