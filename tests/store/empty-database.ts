import { deleteDB } from 'idb';
import { snapshotsName } from '../../src/store/backup/snapshots.ts';
import { closeDatabase, databaseName } from '../../src/store/db.ts';

/** For `beforeEach`: nothing is stored. */
export async function emptyDatabase(): Promise<void> {
  await closeDatabase();
  await deleteDB(databaseName);
  await deleteDB(snapshotsName);
}
