import type { Contents, Tombstone } from '../contents.ts';
import { byKind, entriesOf } from '../hanging.ts';
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
interface Side {
  readonly kind: string;
  readonly id: string;
  readonly revision: number;
  /** When it was changed or removed. */
  readonly at: number;
  readonly record?: StoredRecord;
  readonly tombstone?: Tombstone;
}

/**
 * Which of two sides stays: the greater revision; at equal revisions a record before a removal, then the later
 * change, then the greater text. A total order, so that any sequence of merges between phones ends the same.
 */
const order = (a: Side, b: Side): number =>
  a.revision - b.revision ||
  Number(Boolean(a.record)) - Number(Boolean(b.record)) ||
  a.at - b.at ||
  byText(canonicalJson(a), canonicalJson(b));

const byText = (a: string, b: string) => Number(a > b) - Number(a < b);

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
    const records = { mine: own?.record, theirs: side.record };
    if (!records.mine && !records.theirs) continue;
    const { kind, id } = side;
    const entry = { kind, id, difference: difference(own, side, stays), ...records, stays } as const;
    entries.push(entry);
    const wanted = choices.get(key);
    const record = wanted && records[wanted];
    if (!record || (wanted === stays && entry.difference !== 'conflict')) continue;
    const revision = Math.max(own?.revision ?? 0, side.revision) + 1;
    merged.set(key, { kind, id, revision, at: now, record: { ...record, revision, updated: now } });
  }
  return { merged: contentsOf(merged), entries };
}

function difference(own: Side | undefined, side: Side, stays: 'mine' | 'theirs'): Difference {
  if (!own) return 'new';
  if (!side.record) return stays === 'theirs' ? 'removed' : 'older';
  if (!own.record) return stays === 'theirs' ? 'new' : 'older';
  if (content(own.record) === content(side.record)) return 'same';
  if (asInvented(own.record) && asInvented(side.record)) return 'same';
  if (own.revision === side.revision) return 'conflict';
  return stays === 'theirs' ? 'newer' : 'older';
}

/** A record of the demo that nobody has changed: on another phone it differs in its days alone. */
const asInvented = ({ demo, created, updated }: StoredRecord) => demo && created === updated;

/** What the maker would see of a record: all but its stamps. */
const content = (record: StoredRecord) => canonicalJson({ ...record, updated: 0, revision: 0 });

function sides({ kinds, removed }: Contents): Map<string, Side> {
  const all = new Map<string, Side>();
  const add = (side: Side) => {
    const key = `${side.kind}/${side.id}`;
    const other = all.get(key);
    if (!other || order(side, other) > 0) all.set(key, side);
  };
  for (const tombstone of removed) {
    const { kind, id, revision, removed: at } = tombstone;
    add({ kind, id, revision, at, tombstone });
  }
  for (const { kind, record } of entriesOf({ kinds })) {
    const { id, revision, updated: at } = record;
    add({ kind, id, revision, at, record });
  }
  return all;
}

function contentsOf(all: Map<string, Side>): Contents {
  const inOrder = [...all].sort(([a], [b]) => byText(a, b)).map(([, side]) => side);
  return {
    kinds: byKind(inOrder.flatMap(({ kind, record }) => (record ? { kind, record } : []))),
    removed: inOrder.flatMap(({ tombstone }) => tombstone ?? []),
  };
}
