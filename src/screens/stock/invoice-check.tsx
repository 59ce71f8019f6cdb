import { isProblem } from '../../core/answer/problem.ts';
import { boardFeet, m3, money } from '../../core/answer/quantity.ts';
import { deliveryCost } from '../../core/lumber/delivery-cost.ts';
import { invoiceDifference } from '../../core/lumber/invoice-difference.ts';
import { tally } from '../../core/lumber/tally.ts';
import type { Board } from '../../store/records/board.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { Amount } from '../../ui/amount.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { invoicedVolume, pricedUnit } from './priced-unit.ts';

/** Less than half a cent is no difference in money. */
const noMoney = 0.005;

/** The invoice against the tally, in wood and in money; nothing until there is an invoice. */
export function InvoiceCheck({ delivery, boards }: { delivery: Delivery; boards: readonly Board[] }) {
  const sums = tally(boards);
  if (isProblem(sums)) return null;
  const unit = pricedUnit(delivery);
  const tallied = unit === 'm3' ? sums.cubicMetres.value : sums.boardFeet.value;
  const price = delivery.price.amount;
  return (
    <>
      {delivery.invoiceBoardFeet !== undefined && (
        <Wood delivery={delivery} boards={boards} tallied={tallied} invoiced={invoicedVolume(delivery) ?? 0} />
      )}
      {delivery.invoiceTotal !== undefined && (
        <Total total={delivery.invoiceTotal} by={{ tallied, unit, price, freight: delivery.freight }} />
      )}
    </>
  );
}

interface WoodProps {
  delivery: Delivery;
  boards: readonly Board[];
  tallied: number;
  invoiced: number;
}

function Wood({ delivery, boards, tallied, invoiced }: WoodProps) {
  const unit = pricedUnit(delivery);
  const found = invoiceDifference({ tallied, invoiced, unit, price: delivery.price.amount }, boards);
  if (isProblem(found)) return null;
  const volume = (value: number) => <Amount of={unit === 'm3' ? m3(value) : boardFeet(value)} />;
  const { value } = found.volume;
  const agrees = Math.abs(value) < 1e-9;
  return (
    <section class={found.roundingExplains ? 'answer' : 'answer now'} aria-label="Invoice" aria-live="polite">
      <span class="figure words">
        {agrees ? (
          'The invoice agrees'
        ) : (
          <>
            {volume(Math.abs(value))} {value > 0 ? 'more on the invoice' : 'less on the invoice'}
          </>
        )}
      </span>
      {!agrees && (
        <>
          <span>
            That is <Amount of={money(Math.abs(found.money.value))} /> in money.
          </span>
          <span>
            {found.roundingExplains
              ? 'Rounding each board alone can explain it: up to '
              : 'Rounding each board does not explain it; that makes at most '}
            {volume(found.roundingBound.value)}.
          </span>
        </>
      )}
      <div class="workings">
        <ShowWorking of={found.volume.working} label="The difference" />
        <ShowWorking of={found.money.working} label="In money" />
        <ShowWorking of={found.roundingBound.working} label="What rounding can make" />
      </div>
    </section>
  );
}

function Total({ total, by }: { total: number; by: Parameters<typeof deliveryCost>[0] }) {
  const cost = deliveryCost(by);
  if (isProblem(cost)) return null;
  const difference = total - cost.value;
  return (
    <section class="answer" aria-label="Invoice total" aria-live="polite">
      <span>
        By your tally it costs{' '}
        <b>
          <Amount of={money(cost.value)} />
        </b>
        ; the invoice asks for <Amount of={money(total)} />
        {Math.abs(difference) < noMoney ? (
          '.'
        ) : (
          <>
            , <Amount of={money(Math.abs(difference))} /> {difference > 0 ? 'more' : 'less'}.
          </>
        )}
      </span>
      <ShowWorking of={cost.working} label="Cost by the tally" />
    </section>
  );
}
