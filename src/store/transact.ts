import type { IDBPTransaction } from 'idb';
import { closeDatabase, database } from './db.ts';
import type { Kind } from './records/kinds.ts';

export type StoreName = Kind | 'draft' | 'meta' | 'removed';

/** Names that browsers give to a connection that is gone without having said so. */
const gone = new Set(['InvalidStateError', 'UnknownError']);

/** Runs `work` in one transaction: all of it is stored, or nothing. A connection found closed is opened anew, once. */
export async function transact<Mode extends 'readonly' | 'readwrite', T>(
  stores: readonly StoreName[],
  mode: Mode,
  work: (transaction: IDBPTransaction<unknown, string[], Mode>) => Promise<T>,
): Promise<T> {
  try {
    return await once(stores, mode, work);
  } catch (error) {
    if (!(error instanceof DOMException) || !gone.has(error.name)) throw error;
    await closeDatabase();
    return once(stores, mode, work);
  }
}

async function once<Mode extends 'readonly' | 'readwrite', T>(
  stores: readonly StoreName[],
  mode: Mode,
  work: (transaction: IDBPTransaction<unknown, string[], Mode>) => Promise<T>,
): Promise<T> {
  const connection = await database();
  const transaction = connection.transaction([...stores] as string[], mode, { durability: 'strict' });
  const done = transaction.done.then(
    () => ({ stored: true as const }),
    (error: unknown) => ({ stored: false as const, error }),
  );
  try {
    const result = await work(transaction);
    const end = await done;
    if (!end.stored) throw end.error;
    return result;
  } catch (error) {
    try {
      transaction.abort();
    } catch {
      // It has ended already.
    }
    await done;
    throw transaction.error ?? error;
  }
}
