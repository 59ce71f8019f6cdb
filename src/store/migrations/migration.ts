import type { IDBPDatabase, IDBPTransaction } from 'idb';
import type { Contents } from '../contents.ts';

/** One numbered step of the schema. Written once, never changed after it has been released. */
export interface Migration {
  /** The schema version that it leads to; one more than the step before. */
  readonly to: number;
  /** Makes and removes object stores and indexes. */
  shape(database: IDBPDatabase, transaction: IDBPTransaction<unknown, string[], 'versionchange'>): void;
  /**
   * Turns the records of the version before into this version's. Pure and synchronous: it runs first on a copy, then
   * inside the upgrade, and also on old backups. Throws when it meets what it can't convert.
   */
  convert?(before: Contents): Contents;
}
