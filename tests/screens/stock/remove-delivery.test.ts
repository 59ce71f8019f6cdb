import { expect, test } from 'vitest';
import { removeDelivery } from '../../../src/screens/stock/remove-delivery.ts';
import { boards } from '../../../src/store/boards.ts';
import { deliveries } from '../../../src/store/deliveries.ts';
import { aBoard } from '../../store/samples.ts';

test('a delivery goes and comes back; what happened to its boards in between stays', async () => {
  const { id } = await deliveries.add({
    supplier: 'The yard by the river',
    date: '2025-03-14',
    price: { per: 'boardFoot', amount: 9 },
    freight: 0,
  });
  const [kept, burnt] = await boards.addMany([
    aBoard({ chalk: 'A', deliveryId: id }),
    aBoard({ chalk: 'B', deliveryId: id }),
  ]);
  const undo = await removeDelivery(id);
  expect(await deliveries.all()).toEqual([]);
  expect((await boards.all()).map(({ deliveryId }) => deliveryId)).toEqual([undefined, undefined]);

  await boards.change(kept?.id ?? '', (board) => ({ ...board, note: 'pitch pocket' }));
  await boards.remove(burnt?.id ?? '');
  await undo();
  expect(await deliveries.all()).toMatchObject([{ id }]);
  expect(await boards.all()).toMatchObject([{ chalk: 'A', deliveryId: id, note: 'pitch pocket' }]);
});
