import type { IDBPTransaction } from 'idb';
import { closeDatabase, database } from './db.ts';
import type { Kind } from './records/kinds.ts';
import { runTransaction } from './run-transaction.ts';

export type StoreName = Kind | 'draft' | 'meta' | 'removed';

/** Names that browsers give to a connection that is gone without having said so. */
const gone = new Set(['InvalidStateError', 'UnknownError']);

/** Runs `work` in one transaction: all of it is stored, or nothing. A connection found closed is opened anew, once. */
export async function transact<Mode extends 'readonly' | 'readwrite', T>(
  stores: readonly StoreName[],
  mode: Mode,
  work: (transaction: IDBPTransaction<unknown, string[], Mode>) => Promise<T>,
): Promise<T> {
  const opened = database();
  try {
    return await runTransaction(await opened, stores, mode, work);
  } catch (error) {
    if (!(error instanceof DOMException) || !gone.has(error.name)) throw error;
    // Whoever found it closed first has opened it anew for all.
    let anew = database();
    if (anew === opened) {
      await closeDatabase();
      anew = database();
    }
    return runTransaction(await anew, stores, mode, work);
  }
}
