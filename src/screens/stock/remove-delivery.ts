import type { Change } from '../../store/commit.ts';
import type { Board } from '../../store/records/board.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { writeFrom } from '../../store/write.ts';

/** Removes a delivery's record; its boards stay, without one, in the same transaction. Gives the way back. */
export async function removeDelivery(id: string): Promise<() => Promise<void>> {
  let delivery: Delivery | undefined;
  let own: readonly Board[] = [];
  await writeFrom(['delivery', 'board'], async (stored) => {
    delivery = await stored.get('delivery', id);
    own = await stored.where('board', 'deliveryId', id);
    return [
      { kind: 'delivery', remove: id },
      ...own.map(({ deliveryId: _, ...board }): Change => ({ kind: 'board', put: board })),
    ];
  });
  return async () => {
    await writeFrom(['delivery', 'board'], async (stored) => {
      // What has been noted on a board since stays; one that is gone by now stays gone.
      const now = await Promise.all(own.map((board) => stored.get('board', board.id)));
      return [
        ...(delivery ? [{ kind: 'delivery', put: delivery } as Change] : []),
        ...now.flatMap((board): Change[] =>
          board ? [{ kind: 'board', put: { ...board, deliveryId: id } as Board }] : [],
        ),
      ];
    });
  };
}
