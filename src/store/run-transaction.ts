import type { IDBPDatabase, IDBPTransaction } from 'idb';

/** Runs `work` in one transaction of this connection. Resolves once it is stored; when anything fails, nothing is. */
export async function runTransaction<Mode extends 'readonly' | 'readwrite', T>(
  connection: IDBPDatabase,
  stores: readonly string[],
  mode: Mode,
  work: (transaction: IDBPTransaction<unknown, string[], Mode>) => Promise<T>,
): Promise<T> {
  const transaction = connection.transaction([...stores], mode, { durability: 'strict' });
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
