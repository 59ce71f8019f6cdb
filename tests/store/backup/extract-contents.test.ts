import { beforeEach, describe, expect, test } from 'vitest';
import { applyBackup } from '../../../src/store/backup/apply-backup.ts';
import { backupText } from '../../../src/store/backup/backup-text.ts';
import { extractContents } from '../../../src/store/backup/extract-contents.ts';
import { previewBackup } from '../../../src/store/backup/preview-backup.ts';
import { readBackup } from '../../../src/store/backup/read-backup.ts';
import { loadDemo, unloadDemo } from '../../../src/store/demo/demo-shop.ts';
import { schemaVersion } from '../../../src/store/migrations/list.ts';
import type { Kind, Kinds } from '../../../src/store/records/kinds.ts';
import { defaultShop } from '../../../src/store/records/shop.ts';
import { changeShop, readShop } from '../../../src/store/shop.ts';
import { emptyDatabase } from '../empty-database.ts';
import { oneOfEach } from '../samples.ts';

const stored = { created: 1, updated: 1, revision: 1 };
const as = <K extends Kind>(kind: K, id: string, given: Partial<Kinds[K]>): Kinds[K] => ({
  ...oneOfEach[kind],
  ...stored,
  ...given,
  id,
});

/** Two pieces, two deliveries, boards of each, and one plan that takes a board from the rack. */
const shop = {
  kinds: {
    shop: [oneOfEach.shop],
    piece: [as('piece', 'chest', {}), as('piece', 'bench', {})],
    delivery: [as('delivery', 'spring', {}), as('delivery', 'autumn', {})],
    board: [
      as('board', 'planned', { deliveryId: 'spring', pieceId: undefined, parentId: undefined }),
      as('board', 'set-aside', { deliveryId: undefined, pieceId: 'chest', parentId: undefined }),
      as('board', 'other', { deliveryId: 'autumn', pieceId: 'bench', parentId: undefined }),
      as('board', 'offcut', { deliveryId: undefined, pieceId: undefined, parentId: 'planned' }),
      as('board', 'offcut-of-offcut', { deliveryId: undefined, pieceId: undefined, parentId: 'offcut' }),
    ],
    plan: [
      as('plan', 'plan', {
        pieceId: 'chest',
        blanks: [{ board: 'planned', start: 0, length: 900, strips: [{ width: 80, part: 'p', unit: 1 }] }],
      }),
      as('plan', 'other-plan', { pieceId: 'bench', blanks: [] }),
    ],
    glueup: [as('glueup', 'glue', { pieceId: 'chest' }), as('glueup', 'other-glue', { pieceId: undefined })],
    timer: [
      as('timer', 'ticking', { for: { kind: 'glueup', id: 'glue' } }),
      as('timer', 'elsewhere', { for: { kind: 'glueup', id: 'other-glue' } }),
    ],
  },
  removed: [{ kind: 'board', id: 'gone', revision: 2, removed: 1 }],
};

const chest = { kind: 'piece', id: 'chest' } as const;
const spring = { kind: 'delivery', id: 'spring' } as const;

const idsOf = ({ kinds }: { kinds: { [kind: string]: readonly { id: string }[] } }) =>
  Object.fromEntries(
    Object.entries(kinds)
      .filter(([, records]) => records.length > 0)
      .map(([kind, records]) => [kind, records.map(({ id }) => id).sort()]),
  );

test('a piece goes with its work and the boards it needs, and with nothing of another piece or the shop', () => {
  const sent = extractContents(shop, chest);
  expect(idsOf(sent)).toEqual({
    piece: ['chest'],
    plan: ['plan'],
    glueup: ['glue'],
    timer: ['ticking'],
    board: ['planned', 'set-aside'],
    delivery: ['spring'],
  });
  expect(sent.removed).toEqual([]);
});

test('a delivery goes with its boards and all that was cut from them', () => {
  expect(idsOf(extractContents(shop, spring))).toEqual({
    delivery: ['spring'],
    board: ['offcut', 'offcut-of-offcut', 'planned'],
  });
});

test('the own woods that it uses go along, with nothing else of the shop', () => {
  const { shop: mine } = oneOfEach;
  const plum = { name: 'plum', tangential: 9.1 };
  const other = { name: 'pear', tangential: 8 };
  const own = { ...mine, woods: [plum, other] };
  const [part] = oneOfEach.piece.parts;
  if (!part) throw new Error('no part');
  const ofPlum = as('piece', 'chest', { parts: [{ ...part, species: 'plum' }] });
  const sent = extractContents({ ...shop, kinds: { ...shop.kinds, shop: [own], piece: [ofPlum] } }, chest);
  expect(sent.kinds.shop).toEqual([{ ...defaultShop(0), revision: 1, woods: [plum] }]);

  const boards = shop.kinds.board.map((board) => ({ ...board, species: board.id === 'planned' ? 'pear' : 'oak-red' }));
  const delivered = extractContents({ ...shop, kinds: { ...shop.kinds, shop: [own], board: boards } }, spring);
  expect(delivered.kinds.shop).toMatchObject([{ woods: [other] }]);
});

describe('a part of another shop comes in', () => {
  beforeEach(emptyDatabase);
  const [plum, pear] = [
    { name: 'plum', tangential: 9.1 },
    { name: 'pear', tangential: 8 },
  ] as const;
  const part = {
    kinds: { shop: [{ ...defaultShop(0), revision: 1, woods: [plum, pear] }], piece: [as('piece', 'chest', {})] },
    removed: [],
  };

  test('its woods join those here; the shop stays, and a wood that is known here stays as it is', async () => {
    const mine = { name: 'pear', tangential: 7.5 };
    await changeShop((now) => ({ ...now, tapePrecision: 0.7, woods: [mine] }));
    const { merge } = await previewBackup(part, true);
    expect(merge.map(({ difference }) => difference).sort()).toEqual(['new', 'newer']);
    await applyBackup(part, 'merge', { part: true });
    expect(await readShop()).toMatchObject({ tapePrecision: 0.7, woods: [mine, plum], revision: 2 });
    // Again: nothing changes.
    await applyBackup(part, 'merge', { part: true });
    expect(await readShop()).toMatchObject({ woods: [mine, plum], revision: 2 });
  });

  test('they stay when the demo shop that they came into goes', async () => {
    await loadDemo();
    await applyBackup(part, 'merge', { part: true });
    await unloadDemo();
    expect(await readShop()).toMatchObject({ woods: [plum, pear] });
  });

  test('also where no shop is set yet, and where a demo shop has gone', async () => {
    await applyBackup(part, 'merge', { part: true });
    expect(await readShop()).toMatchObject({ woods: [plum, pear] });
    await emptyDatabase();
    await loadDemo();
    await unloadDemo();
    await applyBackup(part, 'merge', { part: true });
    expect(await readShop()).toMatchObject({ woods: [plum, pear] });
  });
});

test('the file says that it is a part, so that nobody replaces a shop with it', async () => {
  const sent = extractContents(shop, chest);
  const outcome = await readBackup(await backupText(sent, schemaVersion, 5, 'Chest'));
  expect(outcome).toMatchObject({ kind: 'read', only: 'Chest', altered: false, damaged: [] });
});

test('a name that is no text is passed over', async () => {
  const file = JSON.parse(await backupText(shop, schemaVersion, 5, 'x'));
  const outcome = await readBackup(JSON.stringify({ ...file, only: { toString: 1 } }));
  expect(outcome).toMatchObject({ kind: 'read' });
  expect(outcome).not.toHaveProperty('only');
});
