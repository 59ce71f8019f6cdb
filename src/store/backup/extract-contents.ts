import type { Contents } from '../contents.ts';
import { entriesOf, withHanging } from '../hanging.ts';
import type { Kind, Kinds } from '../records/kinds.ts';
import { withWoodsUsed } from './woods-of-part.ts';

/** What can be sent by itself. */
export type Extract = { readonly kind: 'piece' | 'delivery'; readonly id: string };

/**
 * The part of a shop's contents that one piece or one delivery needs to be whole on another phone: a piece with its
 * plans, runs, checks, glue-ups, finishes and timers, the boards set aside for it or planned for it, and their
 * deliveries; a delivery with its boards and what was cut from them; either with the figures of the shop's own woods that
 * it uses.
 */
export function extractContents({ kinds }: Contents, { kind, id }: Extract): Contents {
  const all = <K extends Kind>(name: K) => (kinds[name] ?? []) as unknown as readonly Kinds[K][];
  const boards = all('board');
  const needed = new Set([id]);
  if (kind === 'piece') {
    const planned = new Set(
      all('plan')
        .filter(({ pieceId }) => pieceId === id)
        .flatMap(({ blanks }) => blanks.map(({ board }) => board)),
    );
    for (const board of boards) {
      if (board.pieceId !== id && !planned.has(board.id)) continue;
      needed.add(board.id);
      if (board.deliveryId) needed.add(board.deliveryId);
    }
    for (const work of withHanging(entriesOf({ kinds }), [id])) needed.add(work);
  } else {
    const delivered = boards.filter(({ deliveryId }) => deliveryId === id).map((board) => board.id);
    for (const board of withHanging(entriesOf({ kinds }), delivered)) needed.add(board);
  }
  const part = Object.fromEntries(
    Object.entries(kinds).map(([name, records]) => [name, records.filter((record) => needed.has(record.id))]),
  );
  return { kinds: withWoodsUsed(part, { kinds }), removed: [] };
}
