/** What every record carries. Lengths in records are millimetres, instants are milliseconds since 1970. */
export interface StoredRecord {
  readonly id: string;
  readonly created: number;
  readonly updated: number;
  /** Counts up by one with every change; the greater one wins when two phones' records meet. */
  readonly revision: number;
  /** Belongs to the demo shop and goes with it. */
  readonly demo?: boolean;
}

/** What the maker gives; the store stamps the rest. */
export type Fields<R extends StoredRecord> = Omit<R, 'id' | 'created' | 'updated' | 'revision'>;

/** What JSON can hold: for what the core generates and the store only keeps. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [name: string]: Json };
