import { announce } from '../changes.ts';
import type { Contents } from '../contents.ts';
import { schemaVersion } from '../migrations/list.ts';
import { readContents } from '../read-contents.ts';
import { kinds } from '../records/kinds.ts';
import { refill } from '../refill.ts';
import { transact } from '../transact.ts';
import { joinShops } from './join-shops.ts';
import { type Choices, type MergeEntry, mergeContents } from './merge.ts';
import type { ApplyMode } from './preview-backup.ts';
import type { Damaged } from './read-backup.ts';
import { keepSnapshot, type Snapshot, setAside } from './snapshots.ts';
import { storedContents } from './stored-contents.ts';
import { partInto } from './woods-of-part.ts';

export type ApplyOutcome =
  | { readonly kind: 'applied'; readonly snapshot: Snapshot; readonly entries: readonly MergeEntry[] }
  /** Nothing has changed. */
  | { readonly kind: 'failed'; readonly error: unknown };

/**
 * Takes contents from `readBackup` in: `replace` puts them in place of everything, `merge` brings them in record by
 * record; of a `part` of a shop the shop itself stays as it is here. A snapshot is kept first; then one transaction does all of it or nothing.
 */
export async function applyBackup(
  contents: Contents,
  mode: ApplyMode,
  {
    choices = new Map(),
    damaged = [],
    part = false,
    now = Date.now(),
  }: { choices?: Choices; damaged?: readonly Damaged[]; part?: boolean; now?: number } = {},
): Promise<ApplyOutcome> {
  try {
    const reason = mode === 'merge' ? 'merge' : 'restore';
    const before = (await storedContents()).contents;
    const snapshot = await keepSnapshot({ contents: before, schema: schemaVersion, reason, at: now });
    await setAside(damaged, now);
    const entries = await transact([...kinds, 'removed'], 'readwrite', async (transaction) => {
      const mine = await readContents(transaction);
      const [here, there] = part ? [mine, partInto(mine, contents, now)] : joinShops(mine, contents);
      const { merged, entries } = mergeContents(here, there, choices, now);
      const after = mode === 'replace' ? contents : merged;
      await Promise.all([
        refill(transaction.objectStore('removed'), after.removed),
        ...kinds.map((kind) => refill(transaction.objectStore(kind), after.kinds[kind] ?? [])),
      ]);
      return entries;
    });
    for (const kind of kinds) announce(kind);
    return { kind: 'applied', snapshot, entries };
  } catch (error) {
    return { kind: 'failed', error };
  }
}
