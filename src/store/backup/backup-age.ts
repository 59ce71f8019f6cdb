import { transact } from '../transact.ts';
import { storedContents } from './stored-contents.ts';

export interface BackupAge {
  /** When the last backup was taken out; undefined when never. */
  readonly madeAt?: number;
  /** Records changed or removed since. */
  readonly changed: number;
}

/** Remembers that a backup has left the phone; called once it has been shared or saved. */
export async function backupMade(at = Date.now()): Promise<void> {
  await transact(['meta'], 'readwrite', (transaction) => transaction.objectStore('meta').put(at, 'backupMadeAt'));
}

/** How old the last backup is, and how much new work it doesn't hold. The demo shop doesn't count. */
export async function backupAge(now = Date.now()): Promise<BackupAge> {
  const said = (await transact(['meta'], 'readonly', (transaction) =>
    transaction.objectStore('meta').get('backupMadeAt'),
  )) as number | undefined;
  // A backup from the future was made under a wrong clock: what it holds can't be told.
  const madeAt = said !== undefined && said <= now ? said : undefined;
  const since = madeAt ?? -1;
  const { contents } = await storedContents();
  const own = <T extends { readonly demo?: boolean }>(all: readonly T[]) => all.filter(({ demo }) => !demo);
  const changed =
    own(Object.values(contents.kinds).flat()).filter(({ updated }) => updated > since).length +
    own(contents.removed).filter(({ removed }) => removed > since).length;
  return { madeAt, changed };
}
