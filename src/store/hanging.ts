import type { Contents } from './contents.ts';
import type { Reader } from './reader.ts';
import type { Kind } from './records/kinds.ts';
import type { StoredRecord } from './records/record.ts';

export interface Entry {
  readonly kind: Kind;
  readonly record: StoredRecord;
}

/** By what one record hangs on another. */
type Linked = StoredRecord & { pieceId?: string; parentId?: string; for?: { id: string } };

/** All records, each with its kind. */
export const entriesOf = ({ kinds }: Pick<Contents, 'kinds'>): Entry[] =>
  Object.entries(kinds).flatMap(([kind, records]) => records.map((record) => ({ kind: kind as Kind, record })));

/** Records in lists, each under its kind. */
export function byKind(
  entries: readonly { readonly kind: string; readonly record: StoredRecord }[],
): Contents['kinds'] {
  const kinds = new Map<string, StoredRecord[]>();
  for (const { kind, record } of entries) {
    const records = kinds.get(kind) ?? [];
    records.push(record);
    kinds.set(kind, records);
  }
  return Object.fromEntries(kinds);
}

/** All records of these kinds as they are stored. */
export const storedEntries = async (stored: Reader, kinds: readonly Kind[]): Promise<Entry[]> =>
  entriesOf({
    kinds: Object.fromEntries(await Promise.all(kinds.map(async (kind) => [kind, await stored.all(kind)]))),
  });

/**
 * These ids, and those of all that means nothing without one of them: a board without the one that it was cut from, a
 * timer without what it runs for, all else without its piece.
 */
export function withHanging(all: readonly Entry[], ids: Iterable<string>): Set<string> {
  const found = new Set(ids);
  for (let before = -1; before < found.size; ) {
    before = found.size;
    for (const { kind, record } of all) {
      const { pieceId, parentId, for: runs } = record as Linked;
      const holds = [kind === 'board' ? parentId : pieceId, runs?.id];
      if (holds.some((id) => id !== undefined && found.has(id))) found.add(record.id);
    }
  }
  return found;
}
