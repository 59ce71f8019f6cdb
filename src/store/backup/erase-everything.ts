import { deleteDB } from 'idb';
import { announce } from '../changes.ts';
import { closeDatabase, databaseName } from '../db.ts';
import { discardFailedWrite, failedWrites } from '../failed-writes.ts';
import { forgetAll } from '../local-memory.ts';
import { kinds } from '../records/kinds.ts';
import { snapshotsName } from './snapshots.ts';

/** Removes all that the app has stored on this device: records, drafts, snapshots, writes that failed, the look. There is no undo. */
export async function eraseEverything(): Promise<void> {
  for (const { id } of failedWrites()) discardFailedWrite(id);
  forgetAll();
  await closeDatabase();
  await Promise.all([deleteDB(databaseName), deleteDB(snapshotsName)]);
  for (const kind of kinds) announce(kind);
}
