import { boards } from '../../store/boards.ts';
import { finishes } from '../../store/finishes.ts';
import { glueups } from '../../store/glueups.ts';
import { millings } from '../../store/millings.ts';
import { pieces } from '../../store/pieces.ts';
import { plans } from '../../store/plans.ts';
import { newest } from '../../store/records/newest.ts';
import type { Piece } from '../../store/records/piece.ts';
import { planInHand } from '../../store/records/plan-in-hand.ts';
import { squares } from '../../store/squares.ts';
import { timers } from '../../store/timers.ts';
import { findFinish } from '../finish/find-finish.ts';
import type { PieceRecords } from './job-thread.ts';
import type { BenchRecords } from './what-now.ts';

export interface BenchRead extends BenchRecords {
  readonly allPieces: readonly Piece[];
  /** The piece in hand, which may be a finished one. */
  readonly inHand: PieceRecords | undefined;
  /** Whether there is anything worth keeping. */
  readonly begun: boolean;
}

/** All that home speaks of; of each piece what it needs, and of the rack no more than how many boards there are. */
export async function readBench(chosen: string | undefined): Promise<BenchRead> {
  const [allPieces, boardCount, squareCount, all] = await Promise.all([
    pieces.all(),
    boards.count(),
    squares.count(),
    timers.all(),
  ]);
  const latestFirst = allPieces
    .filter(({ finishedAt }) => finishedAt === undefined)
    .sort((a, b) => b.updated - a.updated);
  const hand = allPieces.find(({ id }) => id === chosen) ?? latestFirst[0] ?? allPieces[0];
  const running = all.filter(({ doneAt }) => doneAt === undefined);
  const [ofPieces, ofTimers] = await Promise.all([
    Promise.all([...new Set(hand ? [hand, ...latestFirst] : [])].map(ofPiece)),
    Promise.all(running.map((timer) => glueups.get(timer.for.id))),
  ]);
  const coated = ofPieces.flatMap(({ finishes }) => finishes);
  const records = ofPieces.map(
    ({ finishes: _, ...own }): PieceRecords => ({ ...own, finish: findFinish(own.piece.id, coated, []).finish }),
  );
  return {
    allPieces,
    inHand: records[0],
    pieces: records.filter(({ piece }) => piece.finishedAt === undefined),
    boardCount,
    timers: running,
    glueups: ofTimers.filter((glueup) => glueup !== undefined),
    begun: allPieces.length + boardCount + squareCount + all.length > 0,
  };
}

async function ofPiece(piece: Piece) {
  const [allPlans, runs, checks, glued, coats] = await Promise.all([
    plans.where('pieceId', piece.id),
    millings.where('pieceId', piece.id),
    squares.where('pieceId', piece.id),
    glueups.where('pieceId', piece.id),
    finishes.where('pieceId', piece.id),
  ]);
  return {
    piece,
    plan: planInHand(allPlans),
    milling: newest(runs),
    squares: checks,
    glueups: glued,
    finishes: coats,
  };
}
