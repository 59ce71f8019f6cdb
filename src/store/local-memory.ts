// What is kept beside the database, in the browser's local storage: at hand at once, and with a room of its own.

/** A host may serve other pages too, which share this storage. */
const prefix = 'boardwright-';

/** What was remembered under a name, or `otherwise`. */
export function remembered<T>(name: string, otherwise: T): T {
  try {
    return (JSON.parse(localStorage.getItem(prefix + name) ?? 'null') as T | null) ?? otherwise;
  } catch {
    return otherwise;
  }
}

/** Remembers a value; where there is no room, the next start goes without. */
export function remember(name: string, value: unknown): void {
  try {
    localStorage.setItem(prefix + name, JSON.stringify(value));
  } catch {
    // Not worth a word: what matters more is in the database, or on view in this tab.
  }
}

/** Forgets all that was remembered. */
export function forgetAll(): void {
  for (const key of Object.keys(globalThis.localStorage ?? {}))
    if (key.startsWith(prefix)) localStorage.removeItem(key);
}
