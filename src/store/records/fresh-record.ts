import type { Fields, StoredRecord } from './record.ts';

/** What the maker gives as a record that isn't stored yet. */
export const freshRecord = <R extends StoredRecord>(given: Fields<R>, now: number): R =>
  ({ ...given, id: crypto.randomUUID(), created: now, updated: now, revision: 0 }) as unknown as R;
