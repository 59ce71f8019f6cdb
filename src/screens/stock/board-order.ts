import type { Board } from '../../store/records/board.ts';

/** The order in which boards were logged; those logged at one moment by their marks, C9 before C10. */
export function inLoggedOrder(boards: readonly Board[]): Board[] {
  return [...boards].sort(
    (a, b) => a.created - b.created || a.chalk.length - b.chalk.length || (a.chalk < b.chalk ? -1 : 1),
  );
}
