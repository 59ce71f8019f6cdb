import { signal } from '@preact/signals';

export interface Notice {
  readonly text: string;
  readonly action?: { readonly label: string; run(): void | Promise<void> };
}

/** The latest thing worth saying. It stays until dismissed, acted on or followed by the next: nothing is timed away. */
export const notice = signal<Notice | undefined>(undefined);

export function notify(text: string, action?: Notice['action']): void {
  notice.value = action ? { text, action } : { text };
}

/** Deleting asks nothing first; it offers the way back. */
export function offerUndo(text: string, undo: () => void | Promise<void>): void {
  notify(text, { label: 'Undo', run: undo });
}
