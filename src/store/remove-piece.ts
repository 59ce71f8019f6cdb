import { boards } from './boards.ts';
import type { Change } from './commit.ts';
import { entriesOf, withHanging } from './hanging.ts';
import { readContents } from './read-contents.ts';
import { kinds } from './records/kinds.ts';
import type { StoredRecord } from './records/record.ts';
import { transact } from './transact.ts';
import { write } from './write.ts';

const allButBoards = kinds.filter((kind) => kind !== 'board');

/**
 * Removes a piece with its plans, runs, checks, glue-ups, finishes and their timers, and puts the boards set aside for it
 * back in the rack, all in one transaction. Gives how to bring everything back as it was.
 */
export async function removePiece(id: string): Promise<() => Promise<void>> {
  const all = entriesOf(await transact(allButBoards, 'readonly', readContents));
  const going = withHanging(all, [id]);
  const removed = all.filter(({ record }) => going.has(record.id));
  const freed = (await boards.where('pieceId', id)).filter(({ state }) => state === 'setAside');
  await write([
    ...removed.map(({ kind, record }): Change => ({ kind, remove: record.id })),
    ...freed.map(
      ({ pieceId: _, ...board }): Change => ({ kind: 'board', put: { ...board, state: 'rack' } as StoredRecord }),
    ),
  ]);
  return async () => {
    await write(removed.map(({ kind, record }): Change => ({ kind, put: record })));
    // What has been noted on a board since stays; one that has found another use by now keeps it.
    for (const board of freed)
      await boards.change(board.id, (now) => (now.state === 'rack' ? { ...now, pieceId: id, state: 'setAside' } : now));
  };
}
