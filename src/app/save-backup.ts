import { saveFile } from './save-file.ts';

/** Takes everything out of the phone as one backup file. */
export async function saveBackup(): Promise<'shared' | 'saved' | 'cancelled'> {
  const { exportBackup } = await import('../store/backup/export-backup.ts');
  const { name, text } = await exportBackup();
  return saveFile(name, 'application/json', text);
}
