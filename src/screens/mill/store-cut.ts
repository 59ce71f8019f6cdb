import type { Change } from '../../store/commit.ts';
import type { Board, BoardState } from '../../store/records/board.ts';
import { freshRecord } from '../../store/records/fresh-record.ts';
import { writeFrom } from '../../store/write.ts';
import type { CutBoards } from './cut-boards.ts';

/** Takes the boards that are cut out of the rack and brings their offcuts in, in one transaction. Gives the way back. */
export async function storeCut({ cut, offcuts }: CutBoards): Promise<() => Promise<void>> {
  const now = Date.now();
  const added = offcuts.map((fields) => freshRecord<Board>(fields, now));
  const store = (stateOf: (board: Board) => BoardState, more: readonly Change[]) =>
    writeFrom(['board'], async (stored) => {
      const found = await Promise.all(cut.map(({ id }) => stored.get('board', id)));
      const put = (board: Board): Change => ({ kind: 'board', put: { ...board, state: stateOf(board) } as Board });
      return [...found.flatMap((board) => (board ? put(board) : [])), ...more];
    });
  await store(
    () => 'cut',
    added.map((put) => ({ kind: 'board', put })),
  );
  const before = new Map(cut.map(({ id, state }) => [id, state]));
  return async () => {
    await store(
      ({ id, state }) => before.get(id) ?? state,
      added.map(({ id }) => ({ kind: 'board', remove: id })),
    );
  };
}
