import type { Contents } from '../contents.ts';
import { type MergeEntry, mergeContents } from './merge.ts';
import { storedContents } from './stored-contents.ts';

export type ApplyMode = 'merge' | 'replace';

export interface Preview {
  /** One for each record that either side holds and the other could change. */
  readonly entries: readonly MergeEntry[];
  readonly counts: Readonly<Record<MergeEntry['difference'], number>>;
}

/** What would change if these contents were applied, in either mode. */
export async function previewBackup(theirs: Contents): Promise<Readonly<Record<ApplyMode, Preview>>> {
  const { contents: mine } = await storedContents();
  const { entries } = mergeContents(mine, theirs);
  return { merge: counted(entries), replace: counted(replacing(mine, theirs, entries)) };
}

function counted(entries: readonly MergeEntry[]): Preview {
  const counts = { new: 0, newer: 0, same: 0, older: 0, conflict: 0, removed: 0 };
  for (const { difference } of entries) counts[difference] += 1;
  return { entries, counts };
}

/** When everything is replaced, the file's side always stays, and what it doesn't hold goes. */
function replacing(mine: Contents, theirs: Contents, entries: readonly MergeEntry[]): MergeEntry[] {
  const held = new Set(
    Object.entries(theirs.kinds).flatMap(([kind, records]) => records.map(({ id }) => `${kind}/${id}`)),
  );
  const kept = entries
    .filter(({ theirs: record }) => record)
    .map((entry): MergeEntry => ({ ...entry, difference: entry.mine ? entry.difference : 'new', stays: 'theirs' }));
  const gone = Object.entries(mine.kinds).flatMap(([kind, records]) =>
    records
      .filter(({ id }) => !held.has(`${kind}/${id}`))
      .map((mine): MergeEntry => ({ kind, id: mine.id, difference: 'removed', mine, stays: 'theirs' })),
  );
  return [...kept, ...gone];
}
