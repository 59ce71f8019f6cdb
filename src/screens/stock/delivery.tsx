import { useMemo } from 'preact/hooks';
import { resultOf } from '../../core/answer/result-of.ts';
import { tally } from '../../core/lumber/tally.ts';
import type { Board } from '../../store/records/board.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { Amount } from '../../ui/amount.tsx';
import { day } from '../../ui/day.ts';
import { howMany } from '../../ui/how-many.ts';
import { Screen } from '../../ui/screen.tsx';
import { BoardEntryFields, LogButton } from './board-entry.tsx';
import { DeliveryMore } from './delivery-more.tsx';
import { DeliveryRecord } from './delivery-record.tsx';
import { InvoiceCheck } from './invoice-check.tsx';
import { BoardList } from './rack.tsx';
import { RackTally } from './rack-tally.tsx';
import { useBoardEntry } from './use-board-entry.ts';
import { useRack } from './use-rack.ts';

/** One delivery: its boards, logged one after the other, and whether the invoice agrees. */
export function DeliveryScreen({ delivery }: { delivery: Delivery }) {
  const all = useRack();
  return all ? <Boards delivery={delivery} all={all} /> : null;
}

function Boards({ delivery, all }: { delivery: Delivery; all: readonly Board[] }) {
  const own = useMemo(() => all.filter(({ deliveryId }) => deliveryId === delivery.id), [all, delivery.id]);
  const sums = useMemo(() => tally(own), [own]);
  const newestFirst = useMemo(() => own.toReversed(), [own]);
  const entry = useBoardEntry(all, delivery.id);
  return (
    <Screen
      question="Does the invoice agree?"
      kicker={`Delivery of ${day(delivery.date)}${delivery.supplier === '' ? '' : `, ${delivery.supplier}`}`}
      action={<LogButton entry={entry} />}
    >
      {own.length > 0 ? (
        <RackTally sums={sums} of={`${howMany(own.length, 'board')} in this delivery`} />
      ) : (
        <p>Width, length, next. Wood, thickness and length stay as on the last board.</p>
      )}
      <InvoiceCheck delivery={delivery} boards={own} sums={sums} />
      <BoardEntryFields entry={entry} boards={own}>
        {own.length > 0 && (
          <>
            {' '}
            {own.length} so far, <Amount of={resultOf(sums.boardFeet)} />.
          </>
        )}
      </BoardEntryFields>
      {own.length > 0 && <DeliveryMore delivery={delivery} boards={own} />}
      <DeliveryRecord delivery={delivery} />
      <BoardList boards={newestFirst} />
    </Screen>
  );
}
