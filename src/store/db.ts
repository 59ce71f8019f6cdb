import { type IDBPDatabase, openDB } from 'idb';
import { abortUpgrade } from './abort-upgrade.ts';
import { migrations, schemaVersion } from './migrations/list.ts';

export const databaseName = 'boardwright';

/** How the database stands; a screen says so wherever it isn't `open`. */
export type DatabaseState =
  | 'closed'
  | 'opening'
  | 'open'
  /** Another tab holds an older version open, and has to be closed first. */
  | 'blocked'
  | 'migrating'
  /** The records couldn't be brought to this version. They are untouched and can be exported. */
  | 'migrationFailed'
  /** A newer version of the app has been opened elsewhere: this one has stopped writing. */
  | 'superseded'
  /** The browser closed the connection; the next use opens it again. */
  | 'terminated'
  /** The database was deleted under the app. */
  | 'erased'
  | 'failed';

/** The database can't be used until the maker does something about `state`. */
export class DatabaseUnavailable extends Error {
  override readonly name = 'DatabaseUnavailable';
  readonly state: DatabaseState;
  constructor(state: DatabaseState, cause?: unknown) {
    super(`The database is ${state}.`, { cause });
    this.state = state;
  }
}

let state: DatabaseState = 'closed';
let opened: Promise<IDBPDatabase> | undefined;
const listeners = new Set<(state: DatabaseState) => void>();

/** Calls the listener with the state now and with every later one. */
export function onDatabase(listener: (state: DatabaseState) => void): () => void {
  listeners.add(listener);
  listener(state);
  return () => listeners.delete(listener);
}

function become(next: DatabaseState): void {
  state = next;
  for (const listener of listeners) listener(next);
}

/** The open database; opens it at first use, and again after the browser has closed it. */
export function database(): Promise<IDBPDatabase> {
  if (state === 'superseded' || state === 'migrationFailed') {
    return Promise.reject(new DatabaseUnavailable(state));
  }
  opened ??= open().catch((error) => {
    opened = undefined;
    throw error;
  });
  return opened;
}

/** Lets go of the connection, so that the next use opens anew; also the way to try again after a failure. */
export async function closeDatabase(): Promise<void> {
  const closing = opened;
  opened = undefined;
  become('closed');
  (await closing?.catch(() => undefined))?.close();
}

async function open(): Promise<IDBPDatabase> {
  become('opening');
  try {
    const connection = await connect();
    become('open');
    return connection;
  } catch (error) {
    const newerSchema = error instanceof DOMException && error.name === 'VersionError';
    become(newerSchema ? 'superseded' : error instanceof DatabaseUnavailable ? error.state : 'failed');
    throw newerSchema ? new DatabaseUnavailable(state, error) : error;
  }
}

/** Opens at this schema version. An older database is left alone at first: it is migrated with a snapshot and a dry run. */
async function connect(): Promise<IDBPDatabase> {
  let older = 0;
  const callbacks = {
    blocked: () => become('blocked'),
    blocking: (_: number, wanted: number | null, event: IDBVersionChangeEvent) => {
      (event.target as IDBDatabase).close();
      opened = undefined;
      become(wanted === null ? 'erased' : 'superseded');
    },
    terminated: () => {
      opened = undefined;
      become('terminated');
    },
  };
  try {
    return await openDB(databaseName, schemaVersion, {
      ...callbacks,
      upgrade(fresh, from, _to, transaction) {
        older = from;
        if (from > 0) abortUpgrade(transaction);
        else for (const step of migrations) step.shape(fresh, transaction);
      },
    });
  } catch (error) {
    if (older === 0) throw error;
  }
  become('migrating');
  try {
    const { migrate } = await import('./migrations/migrate.ts');
    await migrate(migrations, callbacks.blocked);
  } catch (error) {
    throw new DatabaseUnavailable('migrationFailed', error);
  }
  return openDB(databaseName, schemaVersion, callbacks);
}
