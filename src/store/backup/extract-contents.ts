import type { Contents } from '../contents.ts';
import type { Kind, Kinds } from '../records/kinds.ts';
import type { StoredRecord } from '../records/record.ts';

/** What can be sent by itself. */
export type Extract = { readonly kind: 'piece' | 'delivery'; readonly id: string };

/**
 * The part of a shop's contents that one piece or one delivery needs to be whole on another phone: a piece with its
 * plans, runs, checks, glue-ups, finishes and timers, and the boards set aside for it or planned for it; a delivery
 * with its boards and what was cut from them.
 */
export function extractContents({ kinds }: Contents, { kind, id }: Extract): Contents {
  const all = <K extends Kind>(name: K) => (kinds[name] ?? []) as unknown as readonly Kinds[K][];
  if (kind === 'delivery') {
    const boards = withOffcuts(
      all('board'),
      all('board').filter(({ deliveryId }) => deliveryId === id),
    );
    return contents({ delivery: all('delivery').filter((delivery) => delivery.id === id), board: boards });
  }
  const ofPiece = <R extends { readonly pieceId?: string }>(records: readonly R[]) =>
    records.filter(({ pieceId }) => pieceId === id);
  const plans = ofPiece(all('plan'));
  const planned = new Set(plans.flatMap(({ blanks }) => blanks.map(({ board }) => board)));
  const board = all('board').filter((one) => one.pieceId === id || planned.has(one.id));
  const delivered = new Set(board.map(({ deliveryId }) => deliveryId));
  const work = {
    milling: ofPiece(all('milling')),
    glueup: ofPiece(all('glueup')),
    finish: ofPiece(all('finish')),
  };
  const ids = new Set(Object.values(work).flatMap((records) => records.map((record) => record.id)));
  return contents({
    piece: all('piece').filter((piece) => piece.id === id),
    plan: plans,
    ...work,
    square: ofPiece(all('square')),
    timer: all('timer').filter((timer) => ids.has(timer.for.id)),
    board,
    delivery: all('delivery').filter((delivery) => delivered.has(delivery.id)),
  });
}

const contents = (kinds: { readonly [kind in Kind]?: readonly StoredRecord[] }): Contents => ({ kinds, removed: [] });

/** These boards and all that was cut from them, however often. */
function withOffcuts(all: readonly Kinds['board'][], from: readonly Kinds['board'][]): Kinds['board'][] {
  const found = new Map(from.map((board) => [board.id, board]));
  for (let before = -1; before < found.size; ) {
    before = found.size;
    for (const board of all) if (board.parentId && found.has(board.parentId)) found.set(board.id, board);
  }
  return [...found.values()];
}
