import type { IDBPDatabase, IDBPTransaction } from 'idb';

/** Runs `work` in one transaction of this connection. Resolves once it is stored; when anything fails, nothing is. */
export async function runTransaction<Mode extends 'readonly' | 'readwrite', T>(
  connection: IDBPDatabase,
  stores: readonly string[],
  mode: Mode,
  work: (transaction: IDBPTransaction<unknown, string[], Mode>) => Promise<T>,
): Promise<T> {
  const transaction = connection.transaction([...stores], mode, { durability: 'strict' });
  const { done } = transaction;
  // Waited for below, when the work is through; until then nobody hears that it failed.
  done.catch(() => {});
  try {
    const result = await work(transaction);
    await done;
    return result;
  } catch (error) {
    try {
      transaction.abort();
    } catch {
      // It has ended already.
    }
    await done.catch(() => {});
    throw transaction.error ?? error;
  }
}
