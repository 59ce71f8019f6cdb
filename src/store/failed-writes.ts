import { type Change, commit, kindsOf } from './commit.ts';
import { remember, remembered } from './local-memory.ts';
import type { Kind, Kinds } from './records/kinds.ts';

/** A write that isn't in the database, kept until it is. */
export interface FailedWrite {
  readonly id: string;
  /** When the maker made the change. */
  readonly at: number;
  readonly changes: readonly Change[];
  /** The phone has no room for it. */
  readonly full: boolean;
  readonly message: string;
  readonly attempts: number;
}

const storageKey = 'failed-writes';
const shortestWait = 2_000;
const longestWait = 60_000;

/** A killed tab needn't lose what the database wouldn't take. */
let list = remembered<readonly FailedWrite[]>(storageKey, []);
let timer: ReturnType<typeof setTimeout> | undefined;
let retrying: Promise<void> | undefined;
const listeners = new Set<(list: readonly FailedWrite[]) => void>();

if (list.length > 0) retryLater();

export const failedWrites = (): readonly FailedWrite[] => list;

/** A record as the last write of it that failed would have it; undefined when there is none. */
export const notYetStored = <K extends Kind>(kind: K, id: string): Kinds[K] | undefined =>
  list
    .flatMap(({ changes, at }) =>
      changes.flatMap((one) =>
        'put' in one && one.kind === kind && one.put.id === id ? { ...one.put, updated: at } : [],
      ),
    )
    .at(-1) as Kinds[K] | undefined;

/** Calls the listener with the list now and after every change of it. Returns how to stop. */
export function onFailedWrites(listener: (list: readonly FailedWrite[]) => void): () => void {
  listeners.add(listener);
  listener(list);
  return () => listeners.delete(listener);
}

/** Keeps a write that failed, and tries it again later. */
export function keepFailedWrite(changes: readonly Change[], at: number, error: unknown): FailedWrite {
  const failed = { id: crypto.randomUUID(), at, changes, attempts: 1, ...why(error) };
  become([...list, failed]);
  retryLater();
  return failed;
}

/** Tries the kept writes again, in order, until one fails. */
export function retryFailedWrites(): Promise<void> {
  retrying ??= retryAll().finally(() => {
    retrying = undefined;
    retryLater();
  });
  return retrying;
}

/** Gives a kept write up; the maker has seen to it otherwise. */
export function discardFailedWrite(id: string): void {
  become(list.filter((failed) => failed.id !== id));
}

async function retryAll(): Promise<void> {
  for (let first = list[0]; first; first = list[0]) {
    const { id, changes, at } = first;
    try {
      await commit(kindsOf(changes), async () => changes, at, true);
      discardFailedWrite(id);
    } catch (error) {
      become(
        list.map((failed) => (failed.id === id ? { ...failed, attempts: failed.attempts + 1, ...why(error) } : failed)),
      );
      return;
    }
  }
}

function retryLater(): void {
  clearTimeout(timer);
  const first = list[0];
  if (first) {
    timer = setTimeout(retryFailedWrites, Math.min(longestWait, shortestWait * 2 ** (first.attempts - 1)));
  }
}

function become(next: readonly FailedWrite[]): void {
  list = next;
  remember(storageKey, list);
  for (const listener of listeners) listener(list);
}

function why(error: unknown): Pick<FailedWrite, 'full' | 'message'> {
  const { name, message } = error instanceof Error ? error : new Error(String(error));
  return { full: name === 'QuotaExceededError', message };
}
