import { type Change, kindsOf } from './commit.ts';
import type { Entry } from './hanging.ts';
import type { Kind } from './records/kinds.ts';
import { write, writeFrom } from './write.ts';

export interface Undo {
  /** What was removed. */
  readonly removed: readonly Entry[];
  /** Brings all of it back. */
  undo(): Promise<void>;
}

/** Removes records of any kinds in one transaction. What isn't there any more is passed over. */
export async function remove(targets: readonly { readonly kind: Kind; readonly id: string }[]): Promise<Undo> {
  let removed: readonly Entry[] = [];
  await writeFrom(kindsOf(targets), async (stored) => {
    const found = await Promise.all(targets.map(({ kind, id }) => stored.get(kind, id)));
    removed = targets.flatMap(({ kind }, at) => (found[at] ? { kind, record: found[at] } : []));
    return removed.map(({ kind, record }): Change => ({ kind, remove: record.id }));
  });
  return {
    removed,
    async undo() {
      await write(removed.map(({ kind, record }): Change => ({ kind, put: record })));
    },
  };
}
