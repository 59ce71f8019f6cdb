import { backupMade } from '../store/backup/backup-age.ts';
import { exportBackup } from '../store/backup/export-backup.ts';
import { saveFile } from '../ui/save-file.ts';
import { signal } from '../ui/signal.ts';
import { dueBackup } from './housekeeping.ts';

/** Counts the backups taken since start: who shows their age reads it again. */
export const backups = signal(0);

/** Takes everything out of the phone as one backup file, and remembers when. */
export async function saveBackup(): Promise<'shared' | 'saved' | 'cancelled'> {
  // What changes while the maker says where it goes isn't in it.
  const at = Date.now();
  const { name, text } = await exportBackup(at);
  const how = await saveFile(name, 'application/json', text);
  // Only for the reminder; a database that can't take it has worse news on view.
  if (how !== 'cancelled') {
    await backupMade(at).catch(() => {});
    backups.value++;
    dueBackup.value = undefined;
  }
  return how;
}
