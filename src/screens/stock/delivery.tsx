import { useLive } from '../../app/live.ts';
import { boards } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { Screen } from '../../ui/screen.tsx';
import { BoardEntryFields } from './board-entry.tsx';
import { inLoggedOrder } from './board-order.ts';
import { BoardRow } from './board-row.tsx';
import { DeliveryRecord } from './delivery-record.tsx';
import { InvoiceCheck } from './invoice-check.tsx';
import { RackTally, SoFar } from './rack-tally.tsx';
import { useBoardEntry } from './use-board-entry.ts';

/** One delivery: its boards, logged one after the other, and whether the invoice agrees. */
export function DeliveryScreen({ delivery }: { delivery: Delivery }) {
  const all = useLive(['board'], () => boards.all());
  return all ? <Boards delivery={delivery} all={inLoggedOrder(all)} /> : null;
}

function Boards({ delivery, all }: { delivery: Delivery; all: readonly Board[] }) {
  const own = all.filter(({ deliveryId }) => deliveryId === delivery.id);
  const common = [...new Set([...all, ...own].map(({ species }) => species).reverse())];
  const entry = useBoardEntry(all, common, delivery.id);
  return (
    <Screen
      question="What came, and does the invoice agree?"
      kicker={`Delivery of ${delivery.date}${delivery.supplier === '' ? '' : `, ${delivery.supplier}`}`}
      action={
        <button type="button" class="button big now" onClick={() => void entry.log()}>
          {entry.form?.fixing ? 'Put right' : 'Log board'}
        </button>
      }
    >
      {own.length > 0 ? (
        <RackTally boards={own} name="in this delivery" />
      ) : (
        <p>Measure board after board: width, length, next. Wood, thickness and length stay as on the last one.</p>
      )}
      <InvoiceCheck delivery={delivery} boards={own} />
      <BoardEntryFields entry={entry} last={own.at(-1)} soFar={<SoFar boards={own} />} />
      <DeliveryRecord delivery={delivery} boards={own} />
      <ul>
        {own.toReversed().map((board) => (
          <li key={board.id}>
            <BoardRow board={board} />
          </li>
        ))}
      </ul>
    </Screen>
  );
}
