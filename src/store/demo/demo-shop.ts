import { boards } from '../boards.ts';
import type { Change } from '../commit.ts';
import { deliveries } from '../deliveries.ts';
import { storedEntries, withHanging } from '../hanging.ts';
import { pieces } from '../pieces.ts';
import { type Kind, kinds } from '../records/kinds.ts';
import type { StoredRecord } from '../records/record.ts';
import { shopId } from '../records/shop.ts';
import { readShop } from '../shop.ts';
import { write, writeFrom } from '../write.ts';
import { demoBoards, demoDelivered } from './demo-boards.ts';
import { demoPieces } from './demo-pieces.ts';

/** Whether anything of the demo shop is there: its boards may be deleted one by one, its pieces still stand. */
export const isDemoLoaded = async (): Promise<boolean> =>
  (await Promise.all([boards, pieces, deliveries].map((of) => of.all()))).flat().some(({ demo }) => demo);

/** Loads the invented shop beside the maker's own records. A shop that the maker has set stays as it is. */
export async function loadDemo(now = Date.now()): Promise<void> {
  const stamps = (id: string) => ({ id, created: now, updated: now, revision: 0, demo: true });
  const put = (kind: Kind, id: string, fields: object): Change => ({ kind, put: { ...fields, ...stamps(id) } });
  const delivery = (wood: string, amount: number, freight: number, invoiceBoardFeet: number) =>
    put('delivery', `demo-delivery-${wood}`, {
      supplier: 'Yard at the mill pond',
      date: new Date(demoDelivered(now)).toISOString().slice(0, 10),
      price: { per: 'boardFoot', amount },
      freight,
      invoiceBoardFeet,
    });
  const shop = await readShop();
  await write(
    [
      ...(shop.revision > 0 ? [] : [put('shop', shopId, shop)]),
      delivery('cherry', 9.8, 35, 52),
      delivery('maple', 5.6, 0, 27),
      ...demoBoards(now).map(({ id, fields }) => put('board', id, fields)),
      ...demoPieces.map(({ id, fields }) => put('piece', id, fields)),
    ],
    now,
  );
}

/** Takes the demo shop out again, with what was made of it: its plans, runs, checks, timers and offcuts. */
export async function unloadDemo(now = Date.now()): Promise<void> {
  await writeFrom(
    kinds,
    async (stored) => {
      const all = await storedEntries(stored, kinds);
      const going = withHanging(
        all,
        all.filter(({ record }) => record.demo).map(({ record }) => record.id),
      );
      return all.flatMap(({ kind, record }): Change[] => {
        if (going.has(record.id)) return [{ kind, remove: record.id }];
        const { pieceId, ...board } = record as StoredRecord & { pieceId?: string; state?: string };
        if (kind !== 'board' || pieceId === undefined || !going.has(pieceId)) return [];
        // The maker's own board, set aside for a demo piece: back to the rack.
        return [{ kind, put: { ...board, state: board.state === 'setAside' ? 'rack' : board.state } as StoredRecord }];
      });
    },
    now,
  );
}
