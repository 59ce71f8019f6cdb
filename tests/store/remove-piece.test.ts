import { expect, test, vi } from 'vitest';
import { boards } from '../../src/store/boards.ts';
import { retryFailedWrites } from '../../src/store/failed-writes.ts';
import { glueups } from '../../src/store/glueups.ts';
import { pieces } from '../../src/store/pieces.ts';
import { plans } from '../../src/store/plans.ts';
import { removePiece } from '../../src/store/remove-piece.ts';
import { timers } from '../../src/store/timers.ts';
import { fillPhone } from './fill-phone.ts';
import { aBoard } from './samples.ts';

const aPiece = (name: string) => pieces.add({ name, parts: [], joints: [], stages: [] });
const contents = async () => ({
  pieces: (await pieces.all()).map(({ name }) => name).sort(),
  plans: (await plans.all()).length,
  timers: (await timers.all()).map(({ name }) => name),
  boards: (await boards.all()).map(({ chalk, state, pieceId }) => ({ chalk, state, pieceId })),
});

test('a piece goes with all that hangs on it, its boards return to the rack, and undo brings all of it back', async () => {
  const chest = await aPiece('chest');
  const bench = await aPiece('bench');
  for (const { id: pieceId } of [chest, bench]) await plans.add({ pieceId, problem: {}, blanks: [], short: [] });
  const glueup = await glueups.add({
    pieceId: chest.id,
    name: 'lid',
    stage: 'lid',
    adhesive: 'pva',
    celsius: 20,
    seams: [],
    phases: [],
  });
  const timer = { phase: 'clamps', startedAt: 0, endsAt: 1 };
  await timers.add({ ...timer, name: 'lid', for: { kind: 'glueup', id: glueup.id } });
  await timers.add({ ...timer, name: 'other', for: { kind: 'glueup', id: 'elsewhere' } });
  await boards.add(aBoard({ chalk: 'A', state: 'setAside', pieceId: chest.id }));
  const before = await contents();

  const undo = await removePiece(chest.id);
  expect(await contents()).toEqual({
    pieces: ['bench'],
    plans: 1,
    timers: ['other'],
    boards: [{ chalk: 'A', state: 'rack', pieceId: undefined }],
  });

  // What is noted on a board in between stays.
  const [board] = await boards.all();
  await boards.change(board?.id ?? '', (now) => ({ ...now, note: 'pitch pocket' }));
  await undo();
  expect((await boards.all())[0]?.note).toBe('pitch pocket');
  const after = await contents();
  expect({ ...after, timers: after.timers.sort() }).toEqual({ ...before, timers: before.timers.sort() });
});

test('what is noted on a board while its piece goes or comes back stays: each is one transaction, read and written', async () => {
  const tray = await aPiece('tray');
  const { id } = await boards.add(aBoard({ chalk: 'B', state: 'setAside', pieceId: tray.id }));
  const transactions = vi.spyOn(IDBDatabase.prototype, 'transaction');
  const undo = await removePiece(tray.id);
  await undo();
  expect(transactions.mock.calls.map(([, mode]) => mode)).toEqual(['readwrite', 'readwrite']);
  transactions.mockRestore();

  const going = removePiece(tray.id);
  await boards.change(id, (now) => ({ ...now, note: 'pitch pocket' }));
  expect(await boards.get(id)).toMatchObject({ note: 'pitch pocket', state: 'rack' });
  const coming = (await going)();
  await boards.change(id, (now) => ({ ...now, width: 99 }));
  await coming;
  expect(await boards.get(id)).toMatchObject({ note: 'pitch pocket', width: 99, state: 'setAside', pieceId: tray.id });
});

test('a piece and its boards come back together, or not at all', async () => {
  const box = await aPiece('box');
  const { id } = await boards.add(aBoard({ chalk: 'D', state: 'setAside', pieceId: box.id }));
  const undo = await removePiece(box.id);
  const makeRoom = fillPhone('board');
  await expect(undo()).rejects.toThrow('The phone is full.');
  makeRoom();
  expect(await pieces.get(box.id)).toBeUndefined();
  await retryFailedWrites();
  expect([await pieces.get(box.id), await boards.get(id)]).toMatchObject([{ name: 'box' }, { state: 'setAside' }]);
});
