import { phrase } from '../../core/answer/phrase.ts';
import { isProblem } from '../../core/answer/problem.ts';
import type { Board } from '../../store/records/board.ts';
import type { Shop } from '../../store/records/shop.ts';
import { dryingIn } from '../stock/drying-in.ts';
import type { PieceRecords } from './job-thread.ts';
import { type Answer, type Answers, andMore } from './what-now.ts';

/**
 * Which boards still dry and until about when, and which a meter should be put to: of a plan before its first cut those
 * that nobody has read, and those whose time is over by the last reading. ms since the epoch.
 */
export async function howDry(
  rack: readonly Board[],
  pieces: readonly PieceRecords[],
  shop: Pick<Shop, 'air' | 'driedFor'>,
  now: number,
): Promise<Omit<Answers, 'now'>> {
  const { verdict } = dryingIn(shop, now);
  const drying: { board: Board; until: number }[] = [];
  const over: Board[] = [];
  // A date takes two readings.
  const read = rack.filter(
    ({ readings = [], state }) => readings.length > 1 && (state === 'rack' || state === 'setAside'),
  );
  for (const [at, board] of read.entries()) {
    // Of thousands the screen must not notice.
    if (at % 200 === 199) await new Promise((done) => setTimeout(done));
    const { found } = verdict(board);
    if (isProblem(found) || found.value.state === 'ready') continue;
    const { expectedAt } = found.value;
    if (expectedAt === undefined) continue;
    if (expectedAt > now) drying.push({ board, until: expectedAt });
    else over.push(board);
  }
  const unread = pieces.flatMap(({ piece, plan, milling }) => {
    if (!plan || milling) return [];
    const planned = new Set(plan.blanks.map(({ board }) => board));
    return about(
      `No moisture reading: ${piece.name}`,
      rack.filter(({ id, readings }) => planned.has(id) && !readings?.length),
    );
  });
  return {
    waits: about(
      'Still drying',
      drying.map(({ board }) => board),
    ).map((answer) => ({
      ...answer,
      until: Math.max(...drying.map(({ until }) => until)),
      about: true,
    })),
    missing: [...about('Dry by now? Read it again', over), ...unread],
  };
}

/** Boards of which one thing is said, by their chalk marks; the way leads to the first. */
function about(what: string, boards: readonly Board[]): Answer[] {
  const [first] = boards;
  return first
    ? [{ what: phrase`${what}`, of: andMore(boards.map(({ chalk }) => chalk)), screen: 'stock', id: first.id }]
    : [];
}
