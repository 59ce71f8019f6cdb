import type { BackupAge } from '../store/backup/backup-age.ts';
import { signal } from '../ui/signal.ts';

/** How far the last backup lies behind, once it is time to say so. */
export const dueBackup = signal<BackupAge | undefined>(undefined);

/** Time for the maker's first taps, before anything is read that nobody waits for. */
const quietAfter = 4_000;

/** Keeps the day's snapshot, and looks whether a backup is due, in a quiet moment after start. */
export function keepHouse(): void {
  setTimeout(() => {
    if ('requestIdleCallback' in window) requestIdleCallback(() => void work());
    else void work();
  }, quietAfter);
}

async function work(): Promise<void> {
  try {
    const { keepAutomaticSnapshot } = await import('../store/backup/snapshots.ts');
    await keepAutomaticSnapshot();
    await lookAtBackup();
  } catch {
    // Records that can't be read are the shell's to report; the next start tries again.
  }
}

async function lookAtBackup(): Promise<void> {
  const [{ backupAge }, { backupDue }] = await Promise.all([
    import('../store/backup/backup-age.ts'),
    import('../store/backup/backup-due.ts'),
  ]);
  const age = await backupAge();
  dueBackup.value = backupDue(age, Date.now()) ? age : undefined;
}
