import { transact } from './transact.ts';

/** A half-typed form. The key carries the version of the form: `board-form-1`. The value isn't checked. */
export async function readDraft<T>(key: string): Promise<T | undefined> {
  const draft = await transact(['draft'], 'readonly', (transaction) => transaction.objectStore('draft').get(key));
  return (draft as { value: T } | undefined)?.value;
}

/** Keeps what is typed so far; false when the database wouldn't take it. Never rejects: typing goes on. */
export const writeDraft = (key: string, value: unknown): Promise<boolean> =>
  transact(['draft'], 'readwrite', (transaction) =>
    transaction.objectStore('draft').put({ value, at: Date.now() }, key),
  ).then(
    () => true,
    () => false,
  );
