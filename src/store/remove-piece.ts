import type { Change } from './commit.ts';
import { type Entry, storedEntries, withHanging } from './hanging.ts';
import type { Board } from './records/board.ts';
import { inRack } from './records/in-rack.ts';
import { kinds } from './records/kinds.ts';
import type { WayBack } from './remove.ts';
import { writeFrom } from './write.ts';

const allButBoards = kinds.filter((kind) => kind !== 'board');

/**
 * Removes a piece with its plans, runs, checks, glue-ups, finishes and their timers, and puts the boards set aside for it
 * back in the rack, all in one transaction. Gives how to bring everything back as it was.
 */
export async function removePiece(id: string): Promise<WayBack> {
  let removed: readonly Entry[] = [];
  let freed: readonly Board[] = [];
  await writeFrom(kinds, async (stored) => {
    const all = await storedEntries(stored, allButBoards);
    const going = withHanging(all, [id]);
    removed = all.filter(({ record }) => going.has(record.id));
    freed = (await stored.where('board', 'pieceId', id)).filter(({ state }) => state === 'setAside');
    return [
      ...removed.map(({ kind, record }): Change => ({ kind, remove: record.id })),
      ...freed.map((board): Change => ({ kind: 'board', put: inRack(board) })),
    ];
  });
  return () =>
    writeFrom(kinds, async (stored) => {
      // What has been noted on a board since stays; one that has found another use by now keeps it.
      const now = await Promise.all(freed.map((board) => stored.get('board', board.id)));
      const back = now.filter((board) => board?.state === 'rack');
      return [
        ...removed.map(({ kind, record }): Change => ({ kind, put: record })),
        ...back.map((board): Change => ({ kind: 'board', put: { ...board, pieceId: id, state: 'setAside' } as Board })),
      ];
    });
}
