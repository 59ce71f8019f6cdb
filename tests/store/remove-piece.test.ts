import { expect, test } from 'vitest';
import { boards } from '../../src/store/boards.ts';
import { glueups } from '../../src/store/glueups.ts';
import { pieces } from '../../src/store/pieces.ts';
import { plans } from '../../src/store/plans.ts';
import { removePiece } from '../../src/store/remove-piece.ts';
import { timers } from '../../src/store/timers.ts';
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
