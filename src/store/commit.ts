import type { IDBPTransaction } from 'idb';
import { announce } from './changes.ts';
import type { Tombstone } from './contents.ts';
import { type Reader, reader } from './reader.ts';
import type { Kind } from './records/kinds.ts';
import type { StoredRecord } from './records/record.ts';
import { transact } from './transact.ts';

/** One record put or removed. */
export type Change =
  | { readonly kind: Kind; readonly put: StoredRecord }
  | { readonly kind: Kind; readonly remove: string };

/** Finds out what to change from what is stored. It may run twice: it only reads. */
export type Decide = (stored: Reader) => Promise<readonly Change[]>;

/**
 * Stores changes in one transaction, all or none; what they are is decided within it, so that nothing comes between
 * reading and writing. Stamps `updated` with `at`, and a revision above the stored one. A late commit (a retry) leaves
 * alone what was changed after `at`. Gives the records as stored.
 */
export async function commit(
  kinds: readonly Kind[],
  decide: Decide,
  at: number,
  late = false,
): Promise<StoredRecord[]> {
  let changes: readonly Change[] = [];
  const stored = await transact([...kinds, 'removed'], 'readwrite', async (transaction) => {
    changes = await decide(reader(transaction));
    const results: StoredRecord[] = [];
    for (const change of changes) {
      const record = await apply(transaction, change, at, late);
      if (record) results.push(record);
    }
    return results;
  });
  for (const kind of kindsOf(changes)) announce(kind);
  return stored;
}

/** The kinds that these are of, each once. */
export const kindsOf = (all: readonly { readonly kind: Kind }[]): Kind[] => [...new Set(all.map(({ kind }) => kind))];

async function apply(
  transaction: IDBPTransaction<unknown, string[], 'readwrite'>,
  change: Change,
  at: number,
  late: boolean,
): Promise<StoredRecord | undefined> {
  const records = transaction.objectStore(change.kind);
  const tombstones = transaction.objectStore('removed');
  const id = 'put' in change ? change.put.id : change.remove;
  const before = (await records.get(id)) as StoredRecord | undefined;
  if (late && before && before.updated > at && !('put' in change && change.put.revision >= before.revision))
    return before;

  if ('remove' in change) {
    if (!before) return undefined;
    const { revision, demo } = before;
    const tombstone: Tombstone = { kind: change.kind, id, revision: revision + 1, removed: at, ...(demo && { demo }) };
    await tombstones.put(tombstone);
    await records.delete(id);
    return undefined;
  }

  const tombstone = before ? undefined : ((await tombstones.get([change.kind, id])) as Tombstone | undefined);
  if (tombstone) {
    if (late && tombstone.removed > at) return undefined;
    await tombstones.delete([change.kind, id]);
  }
  const revision = Math.max(change.put.revision, before?.revision ?? 0, tombstone?.revision ?? 0) + 1;
  const record = { ...change.put, updated: at, revision };
  await records.put(record);
  return record;
}
