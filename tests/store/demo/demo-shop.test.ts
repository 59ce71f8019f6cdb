import { beforeEach, expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { dryingVerdict } from '../../../src/core/moisture/drying-verdict.ts';
import { backupAge } from '../../../src/store/backup/backup-age.ts';
import { exportBackup } from '../../../src/store/backup/export-backup.ts';
import { readBackup } from '../../../src/store/backup/read-backup.ts';
import { storedContents } from '../../../src/store/backup/stored-contents.ts';
import { boards } from '../../../src/store/boards.ts';
import { demoPieces } from '../../../src/store/demo/demo-pieces.ts';
import { isDemoLoaded, loadDemo, unloadDemo } from '../../../src/store/demo/demo-shop.ts';
import { pieces } from '../../../src/store/pieces.ts';
import { plans } from '../../../src/store/plans.ts';
import { removePiece } from '../../../src/store/remove-piece.ts';
import { changeShop, readShop } from '../../../src/store/shop.ts';
import { timers } from '../../../src/store/timers.ts';
import { species } from '../../../src/tables/species.ts';
import { emptyDatabase } from '../empty-database.ts';
import { aBoard } from '../samples.ts';

beforeEach(emptyDatabase);

test('a fresh visitor gets a whole shop, and every record of it is sound', async () => {
  await loadDemo();
  expect(await isDemoLoaded()).toBe(true);
  expect([(await boards.all()).length, (await pieces.all()).length]).toEqual([14, 2]);
  const outcome = await readBackup((await exportBackup()).text);
  expect(outcome).toMatchObject({ kind: 'read', damaged: [] });
});

test('its boards have dried since they came, and are read often enough to be judged', async () => {
  const now = Date.UTC(2026, 5, 30);
  await loadDemo(now);
  for (const { chalk, readings = [] } of await boards.all()) {
    const verdict = dryingVerdict({ readings, target: { least: 6, most: 10 }, now });
    expect(isProblem(verdict) ? verdict : verdict.value.state, chalk).toBe('ready');
    expect(readings[0]?.percent, chalk).toBeGreaterThan((readings.at(-1)?.percent ?? 0) + 1);
  }
});

test('names only species that the tables know, and parts that are there', async () => {
  await loadDemo();
  const known = new Set(species.map(({ id }) => id));
  const named = [...(await boards.all()), ...(await pieces.all()).flatMap(({ parts }) => parts)];
  expect(named.filter((each) => !known.has(each.species))).toEqual([]);
  for (const { fields } of demoPieces) {
    const ids = new Set(fields.parts.map(({ id }) => id));
    const used = [...fields.joints, ...fields.stages].flatMap(({ parts }) => parts);
    expect(used.filter((id) => !ids.has(id))).toEqual([]);
  }
});

test('going in and out leaves the maker’s own records as they were', async () => {
  await changeShop((shop) => ({ ...shop, tapePrecision: 0.7 }));
  const own = await boards.add(aBoard({ chalk: 'own' }));
  const before = (await storedContents()).contents.kinds;
  await loadDemo();
  await loadDemo();
  expect(await boards.all()).toHaveLength(15);
  expect(await readShop()).toEqual(before.shop?.[0]);
  await unloadDemo();
  expect(await isDemoLoaded()).toBe(false);
  expect((await storedContents()).contents.kinds).toEqual(before);
  expect(await boards.all()).toEqual([own]);
});

test('what is left of the demo can still be taken out once its boards are deleted', async () => {
  await loadDemo();
  for (const { id } of await boards.all()) await boards.remove(id);
  expect(await isDemoLoaded()).toBe(true);
  for (const { id } of await pieces.all()) await removePiece(id);
  expect(await isDemoLoaded()).toBe(true);
  await unloadDemo();
  expect(await isDemoLoaded()).toBe(false);
});

test('the demo speaks the units that the phone speaks', async () => {
  const { units } = await readShop();
  await loadDemo();
  expect((await readShop()).units).toEqual(units);
});

test('going in and out is no work that a backup would have to hold', async () => {
  await loadDemo();
  await unloadDemo();
  expect((await backupAge()).changed).toBe(0);
});

test('what the maker has set in the demo shop stays when the demo goes', async () => {
  await loadDemo();
  await changeShop((shop) => ({ ...shop, tapePrecision: 0.7 }));
  await unloadDemo();
  expect(await readShop()).toMatchObject({ tapePrecision: 0.7 });
});

test('what was made of the demo goes with it; an own board set aside for it comes back', async () => {
  await loadDemo();
  const own = await boards.add(aBoard({ state: 'setAside', pieceId: 'demo-piece-chest' }));
  await boards.add(aBoard({ chalk: 'offcut', parentId: 'demo-board-C1' }));
  const plan = await plans.add({ pieceId: 'demo-piece-chest', problem: {}, blanks: [], short: [] });
  await timers.add({ name: 't', for: { kind: 'plan', id: plan.id }, phase: 'p', startedAt: 0, endsAt: 1 });
  await unloadDemo();
  expect([await plans.all(), await timers.all(), await pieces.all()]).toEqual([[], [], []]);
  expect(await boards.all()).toMatchObject([{ id: own.id, state: 'rack' }]);
  expect((await boards.get(own.id))?.pieceId).toBeUndefined();
  expect((await readShop()).revision).toBe(0);
});
