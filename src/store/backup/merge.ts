import type { Contents, Tombstone } from '../contents.ts';
import type { StoredRecord } from '../records/record.ts';
import { canonicalJson } from './canonical-json.ts';

/** How one record of a file stands to the one here. `removed`: it goes, because the other side has removed it. */
export type Difference = 'new' | 'newer' | 'same' | 'older' | 'conflict' | 'removed';

export interface MergeEntry {
  readonly kind: string;
  readonly id: string;
  readonly difference: Difference;
  readonly mine?: StoredRecord;
  readonly theirs?: StoredRecord;
  /** Which side stays when the maker doesn't say. */
  readonly stays: 'mine' | 'theirs';
}

/** A record, or what stays of it after its removal. */
type Side = { readonly record: StoredRecord } | { readonly tombstone: Tombstone };

const recordOf = (side: Side | undefined) => (side && 'record' in side ? side.record : undefined);
const revisionOf = (side: Side) => ('record' in side ? side.record : side.tombstone).revision;

/**
 * Which of two sides stays: the greater revision; at equal revisions a record before a removal, then the later
 * change, then the greater text. A total order, so that any sequence of merges between phones ends the same.
 */
function order(a: Side, b: Side): number {
  const byRevision = revisionOf(a) - revisionOf(b);
  if (byRevision !== 0) return byRevision;
  if ('record' in a !== 'record' in b) return 'record' in a ? 1 : -1;
  const byTime = timeOf(a) - timeOf(b);
  if (byTime !== 0) return byTime;
  const [textA, textB] = [canonicalJson(a), canonicalJson(b)];
  if (textA === textB) return 0;
  return textA > textB ? 1 : -1;
}

const timeOf = (side: Side) => ('record' in side ? side.record.updated : side.tombstone.removed);

/** The side that the maker wants of a record, by `kind/id`. */
export type Choices = ReadonlyMap<string, 'mine' | 'theirs'>;

/**
 * Merges two shops' contents record by record, and says of each record of `theirs` how it stands to `mine`. What the
 * maker chooses gets a revision above both sides, so that it also wins wherever else the two meet; for the rest the
 * newest revision wins.
 */
export function mergeContents(
  mine: Contents,
  theirs: Contents,
  choices: Choices = new Map(),
  now = 0,
): { merged: Contents; entries: MergeEntry[] } {
  const merged = sides(mine);
  const entries: MergeEntry[] = [];
  for (const [key, side] of sides(theirs)) {
    const own = merged.get(key);
    const stays = own && order(own, side) >= 0 ? 'mine' : 'theirs';
    if (stays === 'theirs') merged.set(key, side);
    const records = { mine: recordOf(own), theirs: recordOf(side) };
    if (!records.mine && !records.theirs) continue;
    const entry = { ...keyParts(key), difference: difference(own, side, stays), ...records, stays } as const;
    entries.push(entry);
    const wanted = choices.get(key);
    const record = wanted && records[wanted];
    if (!record || (wanted === stays && entry.difference !== 'conflict')) continue;
    const revision = Math.max(own ? revisionOf(own) : 0, revisionOf(side)) + 1;
    merged.set(key, { record: { ...record, revision, updated: now } });
  }
  return { merged: contentsOf(merged), entries };
}

function difference(own: Side | undefined, side: Side, stays: 'mine' | 'theirs'): Difference {
  if (!own) return 'new';
  if ('tombstone' in side) return stays === 'theirs' ? 'removed' : 'older';
  if ('tombstone' in own) return stays === 'theirs' ? 'new' : 'older';
  if (content(own.record) === content(side.record)) return 'same';
  if (own.record.revision === side.record.revision) return 'conflict';
  return stays === 'theirs' ? 'newer' : 'older';
}

/** What the maker would see of a record: all but its stamps. */
const content = (record: StoredRecord) => canonicalJson({ ...record, updated: 0, revision: 0 });

const keyOf = (kind: string, id: string) => `${kind}/${id}`;

function keyParts(key: string): { kind: string; id: string } {
  const slash = key.indexOf('/');
  return { kind: key.slice(0, slash), id: key.slice(slash + 1) };
}

function sides(contents: Contents): Map<string, Side> {
  const all = new Map<string, Side>();
  const add = (key: string, side: Side) => {
    const other = all.get(key);
    if (!other || order(side, other) > 0) all.set(key, side);
  };
  for (const tombstone of contents.removed) add(keyOf(tombstone.kind, tombstone.id), { tombstone });
  for (const [kind, records] of Object.entries(contents.kinds)) {
    for (const record of records) add(keyOf(kind, record.id), { record });
  }
  return all;
}

function contentsOf(all: Map<string, Side>): Contents {
  const kinds = new Map<string, StoredRecord[]>();
  const removed: Tombstone[] = [];
  for (const [key, side] of [...all].sort(([a], [b]) => (a < b ? -1 : 1))) {
    if ('tombstone' in side) removed.push(side.tombstone);
    else {
      const { kind } = keyParts(key);
      const records = kinds.get(kind) ?? [];
      records.push(side.record);
      kinds.set(kind, records);
    }
  }
  return { kinds: Object.fromEntries(kinds), removed };
}
