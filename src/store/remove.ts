import { type Change, kindsOf } from './commit.ts';
import type { Kind } from './records/kinds.ts';
import { write, writeFrom } from './write.ts';

/** Brings back all that was changed. */
export type WayBack = () => Promise<unknown>;

/** Removes records of any kinds in one transaction; what isn't there any more is passed over. Gives the way back. */
export async function remove(targets: readonly { readonly kind: Kind; readonly id: string }[]): Promise<WayBack> {
  let removed: readonly Change[] = [];
  await writeFrom(kindsOf(targets), async (stored) => {
    const found = await Promise.all(targets.map(({ kind, id }) => stored.get(kind, id)));
    removed = targets.flatMap(({ kind }, at) => (found[at] ? { kind, put: found[at] } : []));
    return targets.map(({ kind, id }): Change => ({ kind, remove: id }));
  });
  return () => write(removed);
}
