import { transact } from './transact.ts';

/** A half-typed form. The key carries the version of the form: `board-form-1`. The value isn't checked. */
export async function readDraft<T>(key: string): Promise<T | undefined> {
  const draft = await transact(['draft'], 'readonly', (transaction) => transaction.objectStore('draft').get(key));
  return (draft as { value: T } | undefined)?.value;
}

/** Keeps what is typed so far; false when the database wouldn't take it. Never rejects: typing goes on. */
export function writeDraft(key: string, value: unknown): Promise<boolean> {
  return quietly((drafts) => drafts.put({ value, at: Date.now() }, key));
}

export function clearDraft(key: string): Promise<boolean> {
  return quietly((drafts) => drafts.delete(key));
}

type Drafts = { put(value: unknown, key: string): Promise<unknown>; delete(key: string): Promise<void> };

async function quietly(work: (drafts: Drafts) => Promise<unknown>): Promise<boolean> {
  try {
    await transact(['draft'], 'readwrite', (transaction) => work(transaction.objectStore('draft')));
    return true;
  } catch {
    return false;
  }
}
