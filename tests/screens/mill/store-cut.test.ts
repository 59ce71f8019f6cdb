import { beforeEach, expect, test, vi } from 'vitest';
import { cutBoards } from '../../../src/screens/mill/cut-boards.ts';
import { storeCut } from '../../../src/screens/mill/store-cut.ts';
import { boards } from '../../../src/store/boards.ts';
import { emptyDatabase } from '../../store/empty-database.ts';
import { putMany } from '../../store/put.ts';
import { plan, rack, sequence } from './records.ts';

beforeEach(emptyDatabase);

test('boards that are cut and what is left of them are stored in one transaction, with a way back', async () => {
  await putMany('board', rack);
  const states = async () =>
    Object.fromEntries(
      (await boards.all()).map(({ chalk, state, note }) => [chalk, note ? `${state}, ${note}` : state]),
    );
  const seen = cutBoards(sequence(plan('one')).input, await boards.all());
  // Noted while the card stood on the screen.
  await boards.change('a1', (board) => ({ ...board, note: 'pitch pocket' }));
  const transactions = vi.spyOn(IDBDatabase.prototype, 'transaction');
  const undo = await storeCut(seen);
  expect(transactions).toHaveBeenCalledTimes(1);
  transactions.mockRestore();
  expect(await states()).toEqual({
    A1: 'cut, pitch pocket',
    A2: 'cut',
    A3: 'rack',
    'A1-1': 'rack',
    'A2-1': 'rack',
  });
  await undo();
  expect(await states()).toEqual({ A1: 'rack, pitch pocket', A2: 'rack', A3: 'rack' });
});

test('boards that are out already give no offcuts again, and what has found another use by then stays', async () => {
  await putMany('board', rack);
  const seen = cutBoards(sequence(plan('one')).input, rack);
  const undo = await storeCut(seen);
  // By a second tab, whose card still stood.
  const nothing = await storeCut(seen);
  const marks = async () => (await boards.all()).map(({ chalk, state }) => `${chalk} ${state}`).sort();
  expect(await marks()).toEqual(['A1 cut', 'A1-1 rack', 'A2 cut', 'A2-1 rack', 'A3 rack']);
  await nothing();
  expect(await marks()).toEqual(['A1 cut', 'A1-1 rack', 'A2 cut', 'A2-1 rack', 'A3 rack']);

  const [offcut] = (await boards.all()).filter(({ chalk }) => chalk === 'A1-1');
  await boards.change(offcut?.id ?? '', (board) => ({ ...board, state: 'setAside', pieceId: 'bench' }));
  await boards.change('a2', (board) => ({ ...board, state: 'used' }));
  await undo();
  expect(await marks()).toEqual(['A1 rack', 'A1-1 setAside', 'A2 used', 'A3 rack']);
});
