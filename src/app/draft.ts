import { useEffect, useState } from 'preact/hooks';
import { readDraft, writeDraft } from '../store/drafts.ts';

/** Once the key that was pressed is answered; in the order asked for. */
const afterwards = (work: () => Promise<unknown>) => void setTimeout(work);

export interface Draft<T> {
  /** Undefined while it is read from the phone. */
  readonly value: T | undefined;
  set(next: T): void;
  /** As `set`, from what stands there by then, on whatever visit of the screen. */
  edit(change: (now: T) => T): void;
  /** Back to the start; what was typed since this one was on view stays. */
  clear(next?: T): unknown;
}

/** What each draft says now: a way back, or a form that a slow phone stores, holds on to what it was. */
const latest = new Map<string, unknown>();

/** Whoever shows a draft: a way back may be taken on a later visit than the one that offered it. */
const shown = new Set<(key: string, value: unknown) => void>();

/** What is half-typed, kept through a killed tab: every change goes to the phone as soon as it is on the screen. */
export function useDraft<T>(key: string, initial: T): Draft<T> {
  // Kept with its key: what was typed under another never shows under this one.
  const [held, setHeld] = useState<{ readonly key: string; readonly value: T }>();
  const value = held?.key === key ? held.value : undefined;
  if (value !== undefined) latest.set(key, value);
  const set = (next: T) => {
    latest.set(key, next);
    setHeld({ key, value: next });
    for (const show of shown) show(key, next);
    afterwards(() => writeDraft(key, next));
  };
  useEffect(() => {
    let over = false;
    const show = (of: string, value: unknown) => of === key && setHeld({ key, value: value as T });
    shown.add(show);
    // What is typed by then stays, however late the phone answers.
    const start = (kept: T | undefined) => {
      if (!over) setHeld((now) => (now?.key === key ? now : { key, value: kept ?? initial }));
    };
    readDraft<T>(key).then(start, () => start(undefined));
    return () => {
      over = true;
      shown.delete(show);
    };
  }, [key]);
  return {
    value,
    set,
    edit: (change) => set(change((latest.get(key) as T | undefined) ?? initial)),
    clear: (next = initial) => latest.get(key) === value && set(next),
  };
}
