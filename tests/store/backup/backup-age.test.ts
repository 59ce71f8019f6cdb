import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, test } from 'vitest';
import { backupAge, backupMade } from '../../../src/store/backup/backup-age.ts';
import { backupDue } from '../../../src/store/backup/backup-due.ts';
import { boards } from '../../../src/store/boards.ts';
import { emptyDatabase } from '../empty-database.ts';
import { aBoard } from '../samples.ts';

const day = 24 * 60 * 60 * 1000;
beforeEach(emptyDatabase);

describe('how far the last backup lies behind', () => {
  test('only what came after it counts', async () => {
    await boards.add(aBoard({}));
    expect(await backupAge()).toEqual({ madeAt: undefined, changed: 1 });
    const at = Date.now() + 1;
    await backupMade(at);
    expect(await backupAge(at)).toEqual({ madeAt: at, changed: 0 });
  });

  test('a backup dated in the future, under a wrong clock, hides no work', async () => {
    await backupMade(Date.now() + 400 * day);
    await boards.add(aBoard({}));
    expect(await backupAge()).toEqual({ madeAt: undefined, changed: 1 });
  });
});

test.each([
  ['nothing entered', undefined, 0, false],
  ['a few records, never backed up', undefined, 9, false],
  ['an evening’s work, never backed up', undefined, 10, true],
  ['an evening’s work, backed up this week', 6, 10, false],
  ['an evening’s work, backed up a week ago', 7, 10, true],
  ['a few records in a month', 30, 9, false],
  ['much work since yesterday', 1, 60, true],
])('%s', (_, daysAgo, changed, due) => {
  const now = 1_700_000_000_000;
  expect(backupDue({ madeAt: daysAgo === undefined ? undefined : now - daysAgo * day, changed }, now)).toBe(due);
});
