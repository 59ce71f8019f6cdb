import type { Contents } from '../contents.ts';
import { type FailedWrite, failedWrites } from '../failed-writes.ts';
import type { StoredRecord } from '../records/record.ts';

/** The records that failed writes would have stored. Failed removals are left out: taking data out keeps too much rather than too little. */
export function failedContents(list: readonly FailedWrite[] = failedWrites()): Contents {
  const kinds = new Map<string, StoredRecord[]>();
  for (const { changes, at } of list) {
    for (const change of changes) {
      if ('remove' in change) continue;
      const records = kinds.get(change.kind) ?? [];
      records.push({ ...change.put, updated: at, revision: change.put.revision + 1 });
      kinds.set(change.kind, records);
    }
  }
  return { kinds: Object.fromEntries(kinds), removed: [] };
}
