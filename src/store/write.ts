import { type Change, commit, type Decide, kindsOf } from './commit.ts';
import { type FailedWrite, keepFailedWrite, notYetStored } from './failed-writes.ts';
import type { Reader } from './reader.ts';
import type { Kind } from './records/kinds.ts';
import type { StoredRecord } from './records/record.ts';

/** The change isn't in the database. It is kept, shown and tried again (`failed-writes.ts`). */
export class WriteFailed extends Error {
  override readonly name = 'WriteFailed';
  readonly write: FailedWrite;
  constructor(write: FailedWrite, cause: unknown) {
    super(write.message, { cause });
    this.write = write;
  }
}

/**
 * Stores changes to any kinds in one transaction: all or none. Resolves once they are in the database, with the
 * records as stored; rejects with `WriteFailed` when they aren't.
 */
export async function write(changes: readonly Change[], now = Date.now()): Promise<StoredRecord[]> {
  if (changes.length === 0) return [];
  try {
    return await commit(kindsOf(changes), async () => changes, now);
  } catch (error) {
    throw keep(changes, now, error);
  }
}

/**
 * As `write`, with changes that follow from what is stored, read in the same transaction: nothing comes between. What a
 * write that failed would have stored is read as if it were: the next edit doesn't undo it.
 */
export async function writeFrom(kinds: readonly Kind[], decide: Decide, now = Date.now()): Promise<StoredRecord[]> {
  let changes: readonly Change[] = [];
  const noting: Decide = async (stored) => {
    changes = await decide(withKept(stored));
    return changes;
  };
  try {
    return await commit(kinds, noting, now);
  } catch (error) {
    // Where nothing could be read, it isn't known what to keep.
    throw changes.length > 0 ? keep(changes, now, error) : error;
  }
}

const keep = (changes: readonly Change[], now: number, error: unknown) =>
  new WriteFailed(keepFailedWrite(changes, now, error), error);

const withKept = (stored: Reader): Reader => ({
  ...stored,
  async get(kind, id) {
    const found = await stored.get(kind, id);
    const kept = notYetStored(kind, id);
    return kept && !(found && found.updated > kept.updated && found.revision > kept.revision) ? kept : found;
  },
});
