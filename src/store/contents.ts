import type { StoredRecord } from './records/record.ts';

/** What stays of a removed record, so that another phone's older copy doesn't bring it back. */
export interface Tombstone {
  readonly kind: string;
  readonly id: string;
  /** One more than the record's last revision. */
  readonly revision: number;
  readonly removed: number;
  /** It belonged to the demo shop. */
  readonly demo?: boolean;
}

/** Everything that the maker has entered, of any schema version: what a backup holds and a migration converts. */
export interface Contents {
  readonly kinds: { readonly [kind: string]: readonly StoredRecord[] };
  readonly removed: readonly Tombstone[];
}
