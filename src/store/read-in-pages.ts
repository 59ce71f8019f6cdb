import type { Kind, Kinds } from './records/kinds.ts';
import { transact } from './transact.ts';

/** So many records come out of the database in a few milliseconds: no frame is held up by reading them. */
const pageSize = 500;

/** What is needed of an object store whose key is the record's id. */
interface Store {
  getAll(query?: IDBKeyRange, count?: number): Promise<{ readonly id: string }[]>;
}

/** All records of a store, in pages so that the screen stays smooth meanwhile. */
export async function allInPages<T extends { readonly id: string }>(store: Store): Promise<T[]> {
  const all: T[] = [];
  for (;;) {
    const last = all.at(-1);
    const page = await store.getAll(last && IDBKeyRange.lowerBound(last.id, true), pageSize);
    all.push(...(page as T[]));
    if (page.length < pageSize) return all;
  }
}

/** All records of one kind, as they stood at one moment. */
export const readInPages = <K extends Kind>(kind: K): Promise<Kinds[K][]> =>
  transact([kind], 'readonly', (transaction) => allInPages(transaction.objectStore(kind)));
