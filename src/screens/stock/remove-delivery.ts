import { boards } from '../../store/boards.ts';
import type { Change } from '../../store/commit.ts';
import { deliveries } from '../../store/deliveries.ts';
import { write } from '../../store/write.ts';

/** Removes a delivery's record; its boards stay, without one, in the same transaction. Gives the way back. */
export async function removeDelivery(id: string): Promise<() => Promise<void>> {
  const delivery = await deliveries.get(id);
  const own = await boards.where('deliveryId', id);
  await write([
    { kind: 'delivery', remove: id },
    ...own.map(({ deliveryId: _, ...board }): Change => ({ kind: 'board', put: board })),
  ]);
  return async () => {
    await write([
      ...(delivery ? [{ kind: 'delivery', put: delivery } as Change] : []),
      ...own.map((board): Change => ({ kind: 'board', put: board })),
    ]);
  };
}
