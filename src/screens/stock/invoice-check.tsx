import { isProblem } from '../../core/answer/problem.ts';
import { money, quantity } from '../../core/answer/quantity.ts';
import { resultOf } from '../../core/answer/result-of.ts';
import { type DeliveryPrice, deliveryCost } from '../../core/lumber/delivery-cost.ts';
import { type Invoice, invoiceDifference } from '../../core/lumber/invoice-difference.ts';
import type { Sums } from '../../core/lumber/tally.ts';
import type { Board } from '../../store/records/board.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { Amount } from '../../ui/amount.tsx';
import { Answer } from '../../ui/answer.tsx';
import { Facts } from '../../ui/facts.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { invoicedVolume, pricedUnit } from './priced-unit.ts';

/** Less than half a cent is no difference in money. */
const noMoney = 0.005;

interface Props {
  delivery: Delivery;
  boards: readonly Board[];
  sums: Sums;
}

/** The invoice against the tally, in wood and in money; nothing until there is an invoice. */
export function InvoiceCheck({ delivery, boards, sums }: Props) {
  const unit = pricedUnit(delivery);
  const { freight, invoiceTotal, price } = delivery;
  const by = { tallied: sums[unit === 'm3' ? 'cubicMetres' : 'boardFeet'].value, unit, price: price.amount };
  const invoiced = invoicedVolume(delivery);
  return (
    <>
      {invoiced !== undefined && <Wood invoice={{ ...by, invoiced }} boards={boards} />}
      {invoiceTotal !== undefined && <Total total={invoiceTotal} by={{ ...by, freight }} />}
    </>
  );
}

function Wood({ invoice, boards }: { invoice: Invoice; boards: readonly Board[] }) {
  const found = invoiceDifference(invoice, boards);
  if (isProblem(found)) return null;
  const { volume, roundingBound, roundingExplains } = found;
  const agrees = Math.abs(volume.value) < 1e-9;
  return (
    <section class={roundingExplains ? 'answer' : 'answer now'} aria-label="Invoice" aria-live="polite">
      <span class="figure words">
        {agrees ? (
          'The invoice agrees'
        ) : (
          <>
            <Amount of={quantity(Math.abs(volume.value), invoice.unit)} /> {volume.value > 0 ? 'more' : 'less'} on the
            invoice
          </>
        )}
      </span>
      {!agrees && (
        <Facts
          rows={[
            ['In money', money(Math.abs(found.money.value))],
            [
              roundingExplains ? 'Rounding can explain it: up to' : 'Rounding does not explain it: at most',
              resultOf(roundingBound),
            ],
          ]}
        />
      )}
      <div class="workings">
        <ShowWorking of={found.money.working} label="The difference" />
        <ShowWorking of={roundingBound.working} label="Rounding" />
      </div>
    </section>
  );
}

function Total({ total, by }: { total: number; by: DeliveryPrice }) {
  const cost = deliveryCost(by);
  if (isProblem(cost)) return null;
  const difference = total - cost.value;
  return (
    <section aria-label="Invoice total">
      <Answer
        label="By your tally"
        of={resultOf(cost)}
        facts={[
          ['The invoice asks', money(total)],
          ...(Math.abs(difference) < noMoney
            ? []
            : [[difference > 0 ? 'That is more by' : 'That is less by', money(Math.abs(difference))] as const]),
        ]}
        working={cost.working}
      />
    </section>
  );
}
