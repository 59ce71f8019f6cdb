import { type IDBPDatabase, openDB } from 'idb';
import { abortUpgrade } from './abort-upgrade.ts';
import { migrations, schemaVersion } from './migrations/list.ts';

export const databaseName = 'boardwright';

/** How the database stands; a screen says so wherever it isn't `open`. */
export type DatabaseState =
  | { readonly kind: 'closed' | 'opening' | 'open' }
  /** Another tab holds an older version open, and has to be closed first. */
  | { readonly kind: 'blocked' }
  | { readonly kind: 'migrating'; readonly from: number; readonly to: number }
  /** The records couldn't be brought to this version. They are untouched and can be exported. */
  | { readonly kind: 'migrationFailed'; readonly from: number; readonly to: number; readonly error: unknown }
  /** A newer version of the app has been opened elsewhere: this one has stopped writing. */
  | { readonly kind: 'superseded' }
  /** The browser closed the connection; the next use opens it again. */
  | { readonly kind: 'terminated' }
  /** The database was deleted under the app. */
  | { readonly kind: 'erased' }
  | { readonly kind: 'failed'; readonly error: unknown };

/** The database can't be used until the maker does something about `state`. */
export class DatabaseUnavailable extends Error {
  override readonly name = 'DatabaseUnavailable';
  readonly state: DatabaseState;
  constructor(state: DatabaseState) {
    super(`The database is ${state.kind}.`);
    this.state = state;
  }
}

let state: DatabaseState = { kind: 'closed' };
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
  if (state.kind === 'superseded' || state.kind === 'migrationFailed') {
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
  become({ kind: 'closed' });
  (await closing?.catch(() => undefined))?.close();
}

async function open(): Promise<IDBPDatabase> {
  become({ kind: 'opening' });
  try {
    const connection = await connect();
    become({ kind: 'open' });
    return connection;
  } catch (error) {
    if (!(error instanceof DatabaseUnavailable)) {
      const newerSchema = error instanceof DOMException && error.name === 'VersionError';
      become(newerSchema ? { kind: 'superseded' } : { kind: 'failed', error });
      if (newerSchema) throw new DatabaseUnavailable(state);
    } else become(error.state);
    throw error;
  }
}

/** Opens at this schema version. An older database is left alone at first: it is migrated with a snapshot and a dry run. */
async function connect(): Promise<IDBPDatabase> {
  let older = 0;
  const callbacks = {
    blocked: () => become({ kind: 'blocked' }),
    blocking: (_: number, wanted: number | null, event: IDBVersionChangeEvent) => {
      (event.target as IDBDatabase).close();
      opened = undefined;
      become({ kind: wanted === null ? 'erased' : 'superseded' });
    },
    terminated: () => {
      opened = undefined;
      become({ kind: 'terminated' });
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
  become({ kind: 'migrating', from: older, to: schemaVersion });
  try {
    const { migrate } = await import('./migrations/migrate.ts');
    await migrate(databaseName, migrations, callbacks.blocked);
  } catch (error) {
    throw new DatabaseUnavailable({ kind: 'migrationFailed', from: older, to: schemaVersion, error });
  }
  return openDB(databaseName, schemaVersion, callbacks);
}
