import { type Change, commit, Stale } from './commit.ts';
import { type FailedWrite, keepFailedWrite } from './failed-writes.ts';
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
  try {
    return await commit(changes, now);
  } catch (error) {
    if (error instanceof Stale) throw error;
    throw new WriteFailed(keepFailedWrite(changes, now, error), error);
  }
}
