import type { Change } from './commit.ts';
import type { Kind } from './records/kinds.ts';
import type { StoredRecord } from './records/record.ts';
import { transact } from './transact.ts';
import { write } from './write.ts';

export interface Undo {
  /** What was removed. */
  readonly removed: readonly { readonly kind: Kind; readonly record: StoredRecord }[];
  /** Brings all of it back. */
  undo(): Promise<void>;
}

/** Removes records of any kinds in one transaction. What isn't there any more is passed over. */
export async function remove(targets: readonly { readonly kind: Kind; readonly id: string }[]): Promise<Undo> {
  const kinds = [...new Set(targets.map(({ kind }) => kind))];
  if (kinds.length === 0) return { removed: [], undo: async () => {} };
  const found = await transact(kinds, 'readonly', (transaction) =>
    Promise.all(targets.map(({ kind, id }) => transaction.objectStore(kind).get(id))),
  );
  const removed = targets.flatMap(({ kind }, at) => (found[at] ? [{ kind, record: found[at] as StoredRecord }] : []));
  await write(removed.map(({ kind, record }): Change => ({ kind, remove: record.id })));
  return {
    removed,
    async undo() {
      await write(removed.map(({ kind, record }): Change => ({ kind, put: record })));
    },
  };
}
