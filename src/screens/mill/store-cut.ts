import type { Change } from '../../store/commit.ts';
import type { Board } from '../../store/records/board.ts';
import { freshRecord } from '../../store/records/fresh-record.ts';
import type { WayBack } from '../../store/remove.ts';
import { writeFrom } from '../../store/write.ts';
import type { CutBoards } from './cut-boards.ts';

/**
 * Takes the boards that are cut out of the rack and brings their offcuts in, in one transaction; one that is no longer as it
 * was on view is passed over. Gives the way back, which leaves alone what has found another use by then.
 */
export async function storeCut({ cut, offcuts }: CutBoards): Promise<WayBack> {
  const now = Date.now();
  const turned = (boards: readonly Board[], turn: (now: Board) => readonly Change[]) =>
    writeFrom(['board'], async (stored) => {
      const found = await Promise.all(boards.map(({ id }) => stored.get('board', id)));
      return boards.flatMap((seen, at) => (found[at]?.state === seen.state ? turn(found[at]) : []));
    }) as Promise<Board[]>;
  const put = (board: Board): Change => ({ kind: 'board', put: board });
  const done = await turned(cut, (board) => [
    put({ ...board, state: 'cut' }),
    ...offcuts.filter(({ parentId }) => parentId === board.id).map((fields) => put(freshRecord(fields, now))),
  ]);
  return () =>
    turned(done, (board) => {
      const before = cut.find(({ id }) => id === board.id);
      return [before ? put({ ...board, state: before.state }) : { kind: 'board', remove: board.id }];
    });
}
