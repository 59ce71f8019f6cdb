import { beforeEach, describe, expect, test } from 'vitest';
import { boards } from '../../src/store/boards.ts';
import { onChange } from '../../src/store/changes.ts';
import { closeDatabase } from '../../src/store/db.ts';
import { readDraft, writeDraft } from '../../src/store/drafts.ts';
import { pieces } from '../../src/store/pieces.ts';
import { plans } from '../../src/store/plans.ts';
import { remove } from '../../src/store/remove.ts';
import { changeShop, readShop } from '../../src/store/shop.ts';
import { timers } from '../../src/store/timers.ts';
import { emptyDatabase } from './empty-database.ts';
import { put, putMany } from './put.ts';
import { aBoard } from './samples.ts';

beforeEach(emptyDatabase);

describe('a repository', () => {
  test('adds with an id, instants and revision 1, and finds again', async () => {
    const board = await boards.add(aBoard({ chalk: 'A1' }));
    expect(board.id).toMatch(/^[0-9a-f-]{36}$/);
    expect(board.revision).toBe(1);
    expect(board.created).toBe(board.updated);
    expect(await boards.get(board.id)).toEqual(board);
    expect(await boards.all()).toEqual([board]);
  });

  test('a put counts the revision up and keeps created', async () => {
    const first = await boards.add(aBoard({}));
    const second = await put('board', { ...first, width: 199 });
    expect(second).toMatchObject({ revision: 2, width: 199, created: first.created });
    expect(second.updated).toBeGreaterThanOrEqual(first.updated);
    // From an old copy: the revision still rises above the stored one.
    expect((await put('board', first)).revision).toBe(3);
  });

  test('change edits what is stored now, so that two tabs lose nothing', async () => {
    const { id } = await boards.add(aBoard({ width: 0 }));
    await Promise.all(
      Array.from({ length: 8 }, () => boards.change(id, (board) => ({ ...board, width: board.width + 1 }))),
    );
    expect(await boards.get(id)).toMatchObject({ width: 8, revision: 9 });
    expect(await boards.change('gone', (board) => board)).toBeUndefined();
  });

  test('many are stored in one transaction, or none', async () => {
    const good = await boards.add(aBoard({ chalk: 'good' }));
    const bad = { ...good, id: 'bad', note: (() => 0) as unknown as string };
    await expect(putMany('board', [{ ...good, chalk: 'changed' }, bad])).rejects.toThrow();
    expect(await boards.get(good.id)).toEqual(good);
  });

  test('looks up by state, species, piece, and by a range of instants', async () => {
    const [rack] = await boards.addMany([
      aBoard({ state: 'rack', species: 'cherry-black' }),
      aBoard({ state: 'cut', species: 'cherry-black', pieceId: 'p' }),
      aBoard({ state: 'cut', species: 'maple-red' }),
    ]);
    expect(await boards.where('state', 'rack')).toEqual([rack]);
    expect(await boards.where('species', 'cherry-black')).toHaveLength(2);
    expect(await boards.where('pieceId', 'p')).toHaveLength(1);
    await plans.add({ pieceId: 'p', problem: {}, blanks: [], short: [] });
    expect(await plans.where('pieceId', 'p')).toHaveLength(1);
    for (const endsAt of [10, 20, 30]) {
      await timers.add({
        name: 'clamp',
        for: { kind: 'glueup', id: `g${endsAt}` },
        phase: 'clamp',
        startedAt: 0,
        endsAt,
      });
    }
    expect((await timers.where('endsAt', IDBKeyRange.upperBound(20))).map(({ endsAt }) => endsAt)).toEqual([10, 20]);
    expect(await timers.where('for.id', 'g30')).toHaveLength(1);
  });

  test('a removal can be undone, and the record then wins over its own removal', async () => {
    const board = await boards.add(aBoard({}));
    const undo = await boards.remove(board.id);
    expect(await boards.get(board.id)).toBeUndefined();
    await undo();
    expect(await boards.get(board.id)).toEqual({ ...board, revision: 3, updated: expect.any(Number) });
  });

  test('several kinds go and come back in one transaction', async () => {
    const piece = await pieces.add({ name: 'Chest', parts: [], joints: [], stages: [] });
    const plan = await plans.add({ pieceId: piece.id, problem: {}, blanks: [], short: [] });
    const undo = await remove([
      { kind: 'piece', id: piece.id },
      { kind: 'plan', id: plan.id },
    ]);
    expect([await pieces.all(), await plans.all()]).toEqual([[], []]);
    await undo();
    expect([(await pieces.all()).length, (await plans.all()).length]).toEqual([1, 1]);
  });
});

describe('the shop', () => {
  test('stands before it is stored, and is stored with the first change', async () => {
    expect(await readShop()).toMatchObject({ id: 'shop', revision: 0 });
    await changeShop((shop) => ({ ...shop, tapePrecision: 1 }));
    await changeShop((shop) => ({ ...shop, hand: 'left' }));
    expect(await readShop()).toMatchObject({ revision: 2, tapePrecision: 1, hand: 'left' });
  });
});

describe('changes', () => {
  test('are told here once the write is done, and to other tabs', async () => {
    const heard: string[] = [];
    const stopBoards = onChange(['board', 'piece'], () => heard.push('board'));
    const stopPlans = onChange(['plan'], () => heard.push('plan'));
    const other = new BroadcastChannel('boardwright-changes');
    const across = new Promise((resolve) => {
      other.onmessage = ({ data }) => resolve(data);
    });
    await boards.add(aBoard({}));
    expect(heard).toEqual(['board']);
    expect(await across).toEqual({ kind: 'board' });

    other.postMessage({ kind: 'plan' });
    await expect.poll(() => heard).toEqual(['board', 'plan']);
    stopBoards();
    stopPlans();
    await boards.add(aBoard({}));
    expect(heard).toHaveLength(2);
    other.close();
  });
});

describe('a draft', () => {
  test('is kept as typed', async () => {
    expect(await readDraft('board-form-1')).toBeUndefined();
    expect(await writeDraft('board-form-1', { width: '5 3/' })).toBe(true);
    await closeDatabase();
    expect(await readDraft('board-form-1')).toEqual({ width: '5 3/' });
  });

  test('that can not be stored says so without rejecting', async () => {
    expect(await writeDraft('k', () => 0)).toBe(false);
  });
});

test('edits asked for one after the other end with the last one, however they overtake each other', async () => {
  const { id } = await pieces.add({ name: '', parts: [], joints: [], stages: [] });
  const typed = ['1', '12', '12 ', '12 1', '12 1/', '12 1/4'];
  await Promise.all(typed.map((name) => pieces.change(id, (piece) => ({ ...piece, name }))));
  expect((await pieces.get(id))?.name).toBe('12 1/4');
});

test('the first two edits of a fresh shop both stay', async () => {
  await Promise.all([
    changeShop((shop) => ({ ...shop, tapePrecision: 1 })),
    changeShop((shop) => ({ ...shop, hand: 'left' })),
  ]);
  expect(await readShop()).toMatchObject({ tapePrecision: 1, hand: 'left' });
});
