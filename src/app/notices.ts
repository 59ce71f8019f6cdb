import { signal } from '../ui/signal.ts';

export interface Notice {
  readonly text: string;
  readonly action?: { readonly label: string; run(): unknown };
  /** Whether the maker has gone on since: it then stands below what is on the screen, in nobody's way. */
  readonly past?: boolean;
}

/** The latest thing worth saying. It stays until dismissed, acted on or followed by the next: nothing is timed away. */
export const notice = signal<Notice | undefined>(undefined);

/** What only informs is over once the maker goes on to another screen or step; a way back stays, out of the way. */
export function leaveNotices(): void {
  if (notice.value) notice.value = notice.value.action && { ...notice.value, past: true };
}

export function notify(text: string, action?: Notice['action']): void {
  notice.value = action ? { text, action } : { text };
}

/** Deleting asks nothing first; it offers the way back. */
export function offerUndo(text: string, undo: () => unknown): void {
  notify(text, { label: 'Undo', run: undo });
}

/**
 * Offers the way back once something is stored: what storing gives, or `undo`. What the phone did not take is kept and shown
 * by the shell.
 */
export const undoable = <T>(
  storing: Promise<T>,
  text: string,
  undo: (stored: T) => unknown = (back) => (back as () => unknown)(),
): Promise<void> =>
  storing.then(
    (stored) => offerUndo(text, () => undo(stored)),
    () => {},
  );
