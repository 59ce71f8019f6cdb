import type { IDBPTransaction } from 'idb';

/** Gives an upgrade up: what was stored stays, and opening rejects. That is the one report wanted of it. */
export function abortUpgrade(transaction: IDBPTransaction<unknown, string[], 'versionchange'>): void {
  transaction.done.catch(() => {});
  transaction.abort();
}
