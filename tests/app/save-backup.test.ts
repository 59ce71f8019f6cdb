import { expect, test, vi } from 'vitest';
import { saveBackup } from '../../src/app/save-backup.ts';
import { backupAge } from '../../src/store/backup/backup-age.ts';
import { boards } from '../../src/store/boards.ts';
import { aBoard } from '../store/samples.ts';

/** While the maker looks for where the file should go, the helper logs a board. */
vi.mock('../../src/ui/save-file.ts', () => ({
  saveFile: async () => {
    await new Promise((done) => setTimeout(done, 5));
    await boards.add(aBoard({ chalk: 'B' }));
    return 'saved';
  },
}));

test('what changes while the file is handed over is not counted as backed up', async () => {
  await boards.add(aBoard({ chalk: 'A' }));
  expect(await saveBackup()).toBe('saved');
  expect((await backupAge()).changed).toBe(1);
});
