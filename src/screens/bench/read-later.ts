import { shop } from '../../app/shop.ts';
import { readInPages } from '../../store/read-in-pages.ts';
import { progressOf } from '../glue/stage-progress.ts';
import { stagesOfPiece } from '../glue/stages-of-piece.ts';
import { howDry } from './how-dry.ts';
import type { PieceRecords } from './job-thread.ts';
import type { BenchRead } from './read-bench.ts';
import type { Later } from './what-now.ts';

/** What is not plain from the records: which glue-ups can begin, and how dry the rack is. */
export async function readLater({ pieces }: BenchRead, now: number): Promise<Later> {
  // Page by page, since the rack may hold thousands.
  const rack = await readInPages('board');
  return {
    gluable: new Map(pieces.flatMap((records) => gluable(records, now))),
    ...(await howDry(rack, pieces, shop.value, now)),
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
