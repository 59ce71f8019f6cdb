import type { Kind, Kinds } from './records/kinds.ts';
import { transact } from './transact.ts';

/** So many records come out of the database in a few milliseconds: no frame is held up by reading them. */
const pageSize = 800;

/** All records of one kind, as they stood at one moment, read in pages so that the screen stays smooth meanwhile. */
export function readInPages<K extends Kind>(kind: K): Promise<Kinds[K][]> {
  return transact([kind], 'readonly', async (transaction) => {
    const store = transaction.objectStore(kind);
    const all: Kinds[K][] = [];
    for (;;) {
      const last = all.at(-1);
      const after = last && IDBKeyRange.lowerBound(last.id, true);
      const page = (await store.getAll(after, pageSize)) as Kinds[K][];
      all.push(...page);
      if (page.length < pageSize) return all;
    }
  });
}
