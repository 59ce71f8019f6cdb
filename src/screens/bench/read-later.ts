import { shop } from '../../app/shop.ts';
import { phrase } from '../../core/answer/phrase.ts';
import { boards } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';
import { progressOf } from '../glue/stage-progress.ts';
import { stagesOfPiece } from '../glue/stages-of-piece.ts';
import type { PieceRecords } from './job-thread.ts';
import type { BenchRead } from './read-bench.ts';
import { type Answer, andMore, type Later } from './what-now.ts';

/** What is not plain from the records: which glue-ups can begin, and which boards nobody has read the moisture of. */
export async function readLater({ pieces }: BenchRead, now: number): Promise<Later> {
  const unread = await Promise.all(pieces.map(unreadBoards));
  return {
    gluable: new Map(pieces.flatMap((records) => gluable(records, now))),
    waits: [],
    missing: unread.flat(),
  };
}

/** While a run goes on, its panels (`lid/1`, and not an assembly) are glued in their turn there. */
function gluable({ piece, plan, milling, glueups }: PieceRecords, now: number): [string, string[]][] {
  const stages = stagesOfPiece(piece, plan, shop.value);
  if (stages.length === 0) return [];
  const running = milling && milling.finishedAt === undefined;
  const can = progressOf(stages, glueups, now, milling).now.filter(({ id }) => !(running && id.includes('/')));
  return [[piece.id, can.map(({ name }) => name)]];
}

/** Before the first cut, boards of the plan whose moisture nobody knows. */
async function unreadBoards({ piece, plan, milling }: PieceRecords): Promise<Answer[]> {
  if (!plan || milling) return [];
  const cut = await Promise.all([...new Set(plan.blanks.map(({ board }) => board))].map(boards.get));
  const unread = cut.filter((board): board is Board => board !== undefined && !board.readings?.length);
  const [first] = unread;
  return first
    ? [
        {
          what: phrase(`No moisture reading of ${andMore(unread.map(({ chalk }) => chalk))}`),
          of: piece.name,
          screen: 'stock',
          id: first.id,
        },
      ]
    : [];
}
