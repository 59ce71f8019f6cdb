import type { IDBPTransaction } from 'idb';
import type { Indexes, Kind, Kinds } from './records/kinds.ts';

/** Reads records of the kinds that a transaction holds, as they are stored at its moment. */
export const reader = (transaction: IDBPTransaction<unknown, string[], IDBTransactionMode>) => ({
  get: <K extends Kind>(kind: K, id: string) => transaction.objectStore(kind).get(id) as Promise<Kinds[K] | undefined>,
  all: <K extends Kind>(kind: K) => transaction.objectStore(kind).getAll() as Promise<Kinds[K][]>,
  /** Records whose `index` is this value, or lies in this range. */
  where: <K extends Kind, I extends keyof Indexes[K] & string>(kind: K, index: I, value: Indexes[K][I] | IDBKeyRange) =>
    transaction
      .objectStore(kind)
      .index(index)
      .getAll(value as IDBValidKey | IDBKeyRange) as Promise<Kinds[K][]>,
});

export type Reader = ReturnType<typeof reader>;
