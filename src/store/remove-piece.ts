import { boards } from './boards.ts';
import type { Change } from './commit.ts';
import { finishes } from './finishes.ts';
import { glueups } from './glueups.ts';
import { millings } from './millings.ts';
import { pieces } from './pieces.ts';
import { plans } from './plans.ts';
import type { Kind } from './records/kinds.ts';
import type { StoredRecord } from './records/record.ts';
import { squares } from './squares.ts';
import { timers } from './timers.ts';
import { write } from './write.ts';

/**
 * Removes a piece with its plans, runs, checks, glue-ups, finishes and their timers, and puts the boards set aside for it
 * back in the rack, all in one transaction. Gives how to bring everything back as it was.
 */
export async function removePiece(id: string): Promise<() => Promise<void>> {
  const ofPiece = await Promise.all(
    [plans, millings, squares, glueups, finishes].map(async ({ kind, where }) =>
      entries(kind, await (where as typeof plans.where)('pieceId', id)),
    ),
  );
  const piece = await pieces.get(id);
  const records = [...(piece ? entries('piece', [piece]) : []), ...ofPiece.flat()];
  const gone = new Set(records.map(({ record }) => record.id));
  const ticking = entries(
    'timer',
    (await timers.all()).filter((timer) => gone.has(timer.for.id)),
  );
  const removed = [...records, ...ticking];
  const freed = (await boards.where('pieceId', id)).filter(({ state }) => state === 'setAside');
  await write([
    ...removed.map(({ kind, record }): Change => ({ kind, remove: record.id })),
    ...freed.map(
      ({ pieceId: _, ...board }): Change => ({ kind: 'board', put: { ...board, state: 'rack' } as StoredRecord }),
    ),
  ]);
  return async () => {
    await write([...removed, ...entries('board', freed)].map(({ kind, record }): Change => ({ kind, put: record })));
  };
}

const entries = (kind: Kind, records: readonly StoredRecord[]) => records.map((record) => ({ kind, record }));
