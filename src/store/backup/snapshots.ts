import { type IDBPDatabase, openDB } from 'idb';
import type { Contents } from '../contents.ts';
import { entriesOf } from '../hanging.ts';
import { runTransaction } from '../run-transaction.ts';
import { backupText } from './backup-text.ts';
import type { Damaged } from './read-backup.ts';
import { storedContents } from './stored-contents.ts';

export const snapshotsName = 'boardwright-snapshots';

/** Why a snapshot was kept: by itself, or before something that replaces records. */
export type SnapshotReason = 'automatic' | 'migration' | 'restore' | 'merge';

export interface Snapshot {
  readonly id: string;
  readonly at: number;
  readonly reason: SnapshotReason;
  readonly schema: number;
  /** How many records it holds, by kind. */
  readonly counts: { readonly [kind: string]: number };
}

/** How many of each are kept before the oldest goes. */
const kept: Readonly<Record<SnapshotReason, number>> = { automatic: 7, migration: 3, restore: 3, merge: 3 };
const day = 24 * 60 * 60 * 1000;

/** A database of its own, so that nothing that happens to the first one reaches it; open only while it is asked. */
async function inSnapshots<T>(work: (database: IDBPDatabase) => Promise<T>): Promise<T> {
  const database = await openDB(snapshotsName, 1, {
    upgrade(fresh) {
      fresh.createObjectStore('snapshot', { keyPath: 'id' });
      fresh.createObjectStore('text');
      fresh.createObjectStore('aside', { keyPath: 'id' });
    },
  });
  try {
    return await work(database);
  } finally {
    database.close();
  }
}

/** Keeps a snapshot, and lets the oldest of its reason go. */
export async function keepSnapshot(given: {
  readonly contents: Contents;
  readonly schema: number;
  readonly reason: SnapshotReason;
  readonly at: number;
}): Promise<Snapshot> {
  const { contents, schema, reason, at } = given;
  const text = await backupText(contents, schema, at);
  const counts = Object.fromEntries(Object.entries(contents.kinds).map(([kind, records]) => [kind, records.length]));
  const snapshot: Snapshot = { id: crypto.randomUUID(), at, reason, schema, counts };
  const surplus = (await listSnapshots()).filter((other) => other.reason === reason).slice(kept[reason] - 1);
  await inSnapshots((database) =>
    runTransaction(database, ['snapshot', 'text'], 'readwrite', async (transaction) => {
      const [about, texts] = [transaction.objectStore('snapshot'), transaction.objectStore('text')];
      await texts.put(text, snapshot.id);
      await about.put(snapshot);
      for (const { id } of surplus) {
        await about.delete(id);
        await texts.delete(id);
      }
    }),
  );
  return snapshot;
}

/** Newest first. */
export async function listSnapshots(): Promise<Snapshot[]> {
  const all: Snapshot[] = await inSnapshots((database) => database.getAll('snapshot'));
  return all.sort((a, b) => b.at - a.at);
}

/** A snapshot as the text of a backup file, to be restored or taken out. */
export const snapshotText = (id: string): Promise<string | undefined> =>
  inSnapshots((database) => database.get('text', id));

/** Keeps a snapshot when the last one is a day old and something has changed since. Meant for a quiet moment after start. */
export async function keepAutomaticSnapshot(now = Date.now()): Promise<Snapshot | undefined> {
  // One from a clock that was ahead says nothing of what has changed since.
  const [last] = (await listSnapshots()).filter(({ reason, at }) => reason === 'automatic' && at <= now);
  if (last && now - last.at < day) return undefined;
  const { contents, schema } = await storedContents();
  const since = last?.at ?? 0;
  const changed =
    entriesOf(contents).some(({ record }) => record.updated > since) ||
    contents.removed.some(({ removed }) => removed > since);
  if (!changed) return undefined;
  return keepSnapshot({ contents, schema, reason: 'automatic', at: now });
}

/** Records of an imported file that couldn't be taken in, each as the JSON text that it was. */
export interface SetAside {
  readonly id: string;
  readonly at: number;
  readonly damaged: readonly { readonly kind: string; readonly why: string; readonly text: string }[];
}

export async function setAside(damaged: readonly Damaged[], at: number): Promise<void> {
  if (damaged.length === 0) return;
  const kept = damaged.map(({ kind, why, record }) => ({ kind, why, text: textOf(record) }));
  const aside: SetAside = { id: crypto.randomUUID(), at, damaged: kept };
  await inSnapshots((database) => database.put('aside', aside));
}

export const listSetAside = (): Promise<SetAside[]> => inSnapshots((database) => database.getAll('aside'));

function textOf(record: unknown): string {
  try {
    return JSON.stringify(record);
  } catch {
    return '(nested too deep to be written; it is still in the file)';
  }
}
