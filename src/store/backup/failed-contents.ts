import type { Contents } from '../contents.ts';
import { type FailedWrite, failedWrites } from '../failed-writes.ts';
import { byKind } from '../hanging.ts';

/** The records that failed writes would have stored. Failed removals are left out: taking data out keeps too much rather than too little. */
export function failedContents(list: readonly FailedWrite[] = failedWrites()): Contents {
  const entries = list.flatMap(({ changes, at }) =>
    changes.flatMap((change) =>
      'remove' in change
        ? []
        : { kind: change.kind, record: { ...change.put, updated: at, revision: change.put.revision + 1 } },
    ),
  );
  return { kinds: byKind(entries), removed: [] };
}
