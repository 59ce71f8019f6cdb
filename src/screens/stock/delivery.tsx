import { useMemo } from 'preact/hooks';
import { isProblem } from '../../core/answer/problem.ts';
import { tally } from '../../core/lumber/tally.ts';
import type { Board } from '../../store/records/board.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { Screen } from '../../ui/screen.tsx';
import { BoardEntryFields } from './board-entry.tsx';
import { DeliveryMore } from './delivery-more.tsx';
import { DeliveryRecord } from './delivery-record.tsx';
import { InvoiceCheck } from './invoice-check.tsx';
import { BoardList } from './rack.tsx';
import { RackTally, SoFar } from './rack-tally.tsx';
import { useBoardEntry } from './use-board-entry.ts';
import { useRack } from './use-rack.ts';

/** One delivery: its boards, logged one after the other, and whether the invoice agrees. */
export function DeliveryScreen({ delivery }: { delivery: Delivery }) {
  const all = useRack();
  return all ? <Boards delivery={delivery} all={all} /> : null;
}

function Boards({ delivery, all }: { delivery: Delivery; all: readonly Board[] }) {
  const own = useMemo(() => all.filter(({ deliveryId }) => deliveryId === delivery.id), [all, delivery.id]);
  const common = useMemo(() => [...new Set([...all, ...own].map(({ species }) => species).reverse())], [all, own]);
  const sums = useMemo(() => tally(own), [own]);
  const newestFirst = useMemo(() => own.toReversed(), [own]);
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
        <RackTally count={own.length} name="in this delivery" sums={isProblem(sums) ? undefined : sums} />
      ) : (
        <p>Measure board after board: width, length, next. Wood, thickness and length stay as on the last one.</p>
      )}
      <InvoiceCheck delivery={delivery} boards={own} />
      <BoardEntryFields entry={entry} last={own.at(-1)} soFar={<SoFar boards={own} />} />
      {own.length > 0 && <DeliveryMore delivery={delivery} boards={own} />}
      <DeliveryRecord delivery={delivery} boards={own} />
      <BoardList boards={newestFirst} />
    </Screen>
  );
}
