import { beforeEach, expect, test } from 'vitest';
import { applyBackup } from '../../../src/store/backup/apply-backup.ts';
import { joinShops } from '../../../src/store/backup/join-shops.ts';
import { mergeContents } from '../../../src/store/backup/merge.ts';
import { previewBackup } from '../../../src/store/backup/preview-backup.ts';
import type { Contents } from '../../../src/store/contents.ts';
import { loadDemo, unloadDemo } from '../../../src/store/demo/demo-shop.ts';
import { defaultShop, type Shop } from '../../../src/store/records/shop.ts';
import { changeShop, readShop } from '../../../src/store/shop.ts';
import { emptyDatabase } from '../empty-database.ts';

const [plum, pear] = [
  { name: 'plum', tangential: 9.1 },
  { name: 'pear', tangential: 8 },
] as const;
const square = (error: number, at: number) => ({ tool: 'old square', kind: 'square', error, at }) as const;
const air = (at: number) => ({ at, celsius: 20, humidity: 50 });

const whole = (shop: Partial<Shop>): Contents => ({
  kinds: { shop: [{ ...defaultShop(0), revision: 1, ...shop }] },
  removed: [],
});

beforeEach(emptyDatabase);

test('whichever of two shops stays, nothing that the other has gathered is lost', async () => {
  await changeShop((now) => ({
    ...now,
    tapePrecision: 0.7,
    woods: [plum],
    references: [square(0.1, 5)],
    air: [air(1)],
  }));
  const gathered = { woods: [pear, plum], references: [square(0.2, 6)], air: [air(1), air(2)] };
  const theirs = { woods: [pear], references: [square(0.2, 6)], air: [air(1), air(2)] };

  await applyBackup(whole({ ...theirs, revision: 9, tapePrecision: 0.3 }), 'merge');
  expect(await readShop()).toMatchObject({ ...gathered, tapePrecision: 0.3 });

  const older = whole({ woods: [{ name: 'apple', tangential: 10 }], revision: 2, tapePrecision: 0.9 });
  await applyBackup(older, 'merge');
  expect(await readShop()).toMatchObject({ tapePrecision: 0.3, woods: [{ name: 'apple' }, pear, plum] });
});

test('of a wood that both know the shop that stays keeps its own figures', async () => {
  await changeShop((now) => ({ ...now, woods: [plum] }));
  await applyBackup(whole({ revision: 9, woods: [{ name: 'plum', tangential: 7 }] }), 'merge');
  expect((await readShop()).woods).toEqual([{ name: 'plum', tangential: 7 }]);
});

test('merging either way round, and again, ends the same', () => {
  const a = whole({ woods: [plum], revision: 3, air: [air(2)] });
  const b = whole({ woods: [pear, { name: 'plum', tangential: 7 }], revision: 5, references: [square(0.1, 5)] });
  const merged = (one: Contents, other: Contents) => mergeContents(...joinShops(one, other)).merged;
  expect(merged(a, b)).toEqual(merged(b, a));
  expect(merged(merged(a, b), a)).toEqual(merged(a, b));
  expect(merged(b, merged(a, b))).toEqual(merged(a, b));
});

test('replacing everything leaves nothing of what was here, and says so first', async () => {
  await changeShop((now) => ({ ...now, woods: [plum] }));
  const contents = whole({ revision: 1, woods: [pear] });
  expect((await previewBackup(contents)).replace).toMatchObject([{ kind: 'shop', difference: 'conflict' }]);
  await applyBackup(contents, 'replace');
  expect((await readShop()).woods).toEqual([pear]);
});

test('a demo shop that has gone takes no real shop with it, and gives a real one none of its readings', async () => {
  await loadDemo();
  await unloadDemo();
  const real = whole({ woods: [plum], revision: 1 });
  await applyBackup(real, 'merge');
  expect((await readShop()).woods).toEqual([plum]);

  await emptyDatabase();
  await loadDemo();
  const shown = await readShop();
  const [, theirs] = joinShops({ kinds: { shop: [{ ...shown, demo: true }] }, removed: [] }, real);
  expect(theirs).toEqual(real);
});
