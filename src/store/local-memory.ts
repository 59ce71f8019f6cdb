/**
 * What is kept beside the database, in the browser's local storage: at hand at once, and with a room of its own. What was
 * remembered under a key, or `otherwise`.
 */
export function remembered<T>(key: string, otherwise: T): T {
  try {
    return (JSON.parse(localStorage.getItem(key) ?? 'null') as T | null) ?? otherwise;
  } catch {
    return otherwise;
  }
}

/** Remembers a value; where there is no room, the next start goes without. */
export function remember(key: string, value: unknown): void {
  try {
    localStorage.setItem(key, JSON.stringify(value));
  } catch {
    // Not worth a word: what matters more is in the database, or on view in this tab.
  }
}
