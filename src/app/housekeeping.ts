import { type BackupAge, backupAge } from '../store/backup/backup-age.ts';
import { backupDue } from '../store/backup/backup-due.ts';
import { keepAutomaticSnapshot } from '../store/backup/snapshots.ts';
import { signal } from '../ui/signal.ts';
import { followAlarms } from './alarms.ts';
import { whenQuiet } from './when-quiet.ts';

/** How far the last backup lies behind, once it is time to say so. */
export const dueBackup = signal<BackupAge | undefined>(undefined);

/** Time for the maker's first taps, before anything is read that nobody waits for. */
const quietAfter = 4_000;

/** Follows the timers; in a quiet moment after start keeps the day's snapshot, and looks whether a backup is due. */
export function keepHouse(): void {
  followAlarms();
  setTimeout(() => whenQuiet(() => void work(), 60_000), quietAfter);
}

async function work(): Promise<void> {
  try {
    await keepAutomaticSnapshot();
    const age = await backupAge();
    dueBackup.value = backupDue(age, Date.now()) ? age : undefined;
  } catch {
    // Records that can't be read are the shell's to report; the next start tries again.
  }
}
