import { type Change, commit, type Decide, kindsOf, Stale } from './commit.ts';
import { type FailedWrite, keepFailedWrite } from './failed-writes.ts';
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
    throw kept(changes, now, error);
  }
}

/** As `write`, with changes that follow from what is stored, read in the same transaction: nothing comes between. */
export async function writeFrom(kinds: readonly Kind[], decide: Decide, now = Date.now()): Promise<StoredRecord[]> {
  let changes: readonly Change[] = [];
  const noting: Decide = async (stored) => {
    changes = await decide(stored);
    return changes;
  };
  try {
    return await commit(kinds, noting, now);
  } catch (error) {
    // Where nothing could be read, it isn't known what to keep.
    throw changes.length > 0 ? kept(changes, now, error) : error;
  }
}

function kept(changes: readonly Change[], now: number, error: unknown): unknown {
  return error instanceof Stale ? error : new WriteFailed(keepFailedWrite(changes, now, error), error);
}
