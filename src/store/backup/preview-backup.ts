import type { Contents } from '../contents.ts';
import { type MergeEntry, mergeContents } from './merge.ts';
import { storedContents } from './stored-contents.ts';

export type ApplyMode = 'merge' | 'replace';

export interface Preview {
  /** One for each record that either side holds and the other could change. */
  readonly entries: readonly MergeEntry[];
  readonly counts: Readonly<Record<MergeEntry['difference'], number>>;
}

/** What would change if these contents were applied. */
export async function previewBackup(contents: Contents, mode: ApplyMode): Promise<Preview> {
  const { contents: mine } = await storedContents();
  return previewOf(mine, contents, mode);
}

export function previewOf(mine: Contents, theirs: Contents, mode: ApplyMode): Preview {
  const entries = mergeContents(mine, theirs).entries;
  const shown = mode === 'merge' ? entries : replacing(mine, theirs, entries);
  const counts = { new: 0, newer: 0, same: 0, older: 0, conflict: 0, removed: 0 };
  for (const { difference } of shown) counts[difference] += 1;
  return { entries: shown, counts };
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
      .map(
        (mine): MergeEntry => ({
          kind,
          id: mine.id,
          difference: 'removed',
          mine,
          stays: 'theirs',
          revision: mine.revision,
        }),
      ),
  );
  return [...kept, ...gone];
}
