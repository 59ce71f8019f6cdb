import { announce } from '../changes.ts';
import type { Contents } from '../contents.ts';
import { schemaVersion } from '../migrations/list.ts';
import { readContents } from '../read-contents.ts';
import { type Kind, kinds } from '../records/kinds.ts';
import type { StoredRecord } from '../records/record.ts';
import { refill } from '../refill.ts';
import { transact } from '../transact.ts';
import { type MergeEntry, mergeContents } from './merge.ts';
import type { ApplyMode } from './preview-backup.ts';
import type { Damaged } from './read-backup.ts';
import { keepSnapshot, type Snapshot, setAside } from './snapshots.ts';
import { storedContents } from './stored-contents.ts';

/** The side that the maker wants of a record, by `kind/id`; for the rest the newest revision wins. */
export type Choices = ReadonlyMap<string, 'mine' | 'theirs'>;

export type ApplyOutcome =
  | { readonly kind: 'applied'; readonly snapshot: Snapshot; readonly entries: readonly MergeEntry[] }
  /** Nothing has changed. */
  | { readonly kind: 'failed'; readonly error: unknown };

/**
 * Takes contents from `readBackup` in: `replace` puts them in place of everything, `merge` brings them in record by
 * record. A snapshot is kept first; then one transaction does all of it or nothing.
 */
export async function applyBackup(
  contents: Contents,
  mode: ApplyMode,
  {
    choices = new Map(),
    damaged = [],
    now = Date.now(),
  }: { choices?: Choices; damaged?: readonly Damaged[]; now?: number } = {},
): Promise<ApplyOutcome> {
  try {
    const reason = mode === 'merge' ? 'merge' : 'restore';
    const before = (await storedContents()).contents;
    const snapshot = await keepSnapshot({ contents: before, schema: schemaVersion, reason, at: now });
    await setAside(damaged, now);
    const entries = await transact([...kinds, 'removed'], 'readwrite', async (transaction) => {
      const mine = await readContents(transaction);
      const { merged, entries } = mergeContents(mine, contents);
      const after = mode === 'replace' ? contents : withChoices(merged, entries, choices, now);
      await Promise.all([
        refill(transaction.objectStore('removed'), after.removed),
        ...kinds.map((kind) => refill(transaction.objectStore(kind), after.kinds[kind] ?? [])),
      ]);
      return entries;
    });
    for (const kind of kinds) announce(kind, []);
    return { kind: 'applied', snapshot, entries };
  } catch (error) {
    return { kind: 'failed', error };
  }
}

/** The maker's choice gets a revision above both sides, so that it also wins wherever else the two meet. */
function withChoices(merged: Contents, entries: readonly MergeEntry[], choices: Choices, now: number): Contents {
  const chosen = new Map<string, StoredRecord>();
  for (const entry of entries) {
    const key = `${entry.kind}/${entry.id}`;
    const side = choices.get(key);
    const record = side && entry[side];
    if (!record || (side === entry.stays && entry.difference !== 'conflict')) continue;
    chosen.set(key, { ...record, revision: entry.revision + 1, updated: now });
  }
  const isChosen = (kind: string, id: string) => chosen.has(`${kind}/${id}`);
  const kindsNow = kinds.map((kind: Kind) => [
    kind,
    [
      ...(merged.kinds[kind] ?? []).filter(({ id }) => !isChosen(kind, id)),
      ...[...chosen].filter(([key]) => key.startsWith(`${kind}/`)).map(([, record]) => record),
    ],
  ]);
  return { kinds: Object.fromEntries(kindsNow), removed: merged.removed.filter(({ kind, id }) => !isChosen(kind, id)) };
}
