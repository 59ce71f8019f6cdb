import type { Contents } from '../contents.ts';
import { joinShops } from './join-shops.ts';
import { type MergeEntry, mergeContents } from './merge.ts';
import { storedContents } from './stored-contents.ts';
import { partInto } from './woods-of-part.ts';

export type ApplyMode = 'merge' | 'replace';

/** One for each record that either side holds and the other could change. */
export type Preview = readonly MergeEntry[];

/** What would change if these contents, a whole shop or a part of one, were applied, in either mode. */
export async function previewBackup(
  contents: Contents,
  part = false,
  now = Date.now(),
): Promise<Readonly<Record<ApplyMode, Preview>>> {
  const { contents: mine } = await storedContents();
  const sides = part ? ([mine, partInto(mine, contents, now)] as const) : joinShops(mine, contents);
  return { merge: mergeContents(...sides).entries, replace: replacing(mine, contents) };
}

/** When everything is replaced, the file's side always stays, and what it doesn't hold goes; removals count for nothing. */
function replacing(mine: Contents, theirs: Contents): MergeEntry[] {
  const [here, there] = [mine, theirs].map(({ kinds }): Contents => ({ kinds, removed: [] })) as [Contents, Contents];
  const gone = mergeContents(there, here).entries.filter(({ difference }) => difference === 'new');
  return [
    ...mergeContents(here, there).entries.map((entry): MergeEntry => ({ ...entry, stays: 'theirs' })),
    ...gone.map(
      ({ kind, id, theirs }) => ({ kind, id, difference: 'removed', mine: theirs, stays: 'theirs' }) as const,
    ),
  ];
}
