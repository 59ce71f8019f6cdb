import { offerUndo } from '../../app/notices.ts';
import { go } from '../../app/routes.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import { deliveries } from '../../store/deliveries.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { Choice, optionsOf } from '../../ui/fields.tsx';
import { OptionalNumber, SettledNumber, SettledText } from '../../ui/settled.tsx';
import { DayField } from './day-field.tsx';
import { invoicedVolume, pricedUnit, recordedVolume } from './priced-unit.ts';
import { removeDelivery } from './remove-delivery.ts';

/** Who brought it, when, and what it is said to cost; kept as it is typed. */
export function DeliveryRecord({ delivery }: { delivery: Delivery }) {
  // A write that fails is kept and shown by the shell.
  const edit = (change: (now: Delivery) => Delivery) => void deliveries.change(delivery.id, change).catch(() => {});
  const unit = pricedUnit(delivery);
  const sum = (label: string, name: string) => ({
    label,
    check: (value: number) => badNumber('', name, value, 'money', { least: 0, most: 1e6 }),
  });
  const remove = async () => {
    try {
      const undo = await removeDelivery(delivery.id);
      go('stock');
      offerUndo('Delivery deleted; its boards stay.', undo);
    } catch {
      // Not stored: the shell keeps the change and shows it.
    }
  };
  return (
    <Card title="The delivery">
      <SettledText
        label="Supplier"
        value={delivery.supplier}
        onAccept={(supplier) => edit((now) => ({ ...now, supplier }))}
      />
      <DayField label="Day" value={delivery.date} onAccept={(date) => edit((now) => ({ ...now, date }))} />
      <Choice
        label="Priced by the"
        value={delivery.price.per}
        options={optionsOf({ boardFoot: 'board foot', cubicMetre: 'cubic metre' })}
        onInput={(per) => edit((now) => ({ ...now, price: { ...now.price, per } }))}
      />
      <div class="fields">
        <SettledNumber
          {...sum('Price', 'The price')}
          hint={unit === 'm3' ? 'per m³' : 'per board foot'}
          value={delivery.price.amount}
          onAccept={(amount) => edit((now) => ({ ...now, price: { ...now.price, amount } }))}
        />
        <SettledNumber
          {...sum('Freight', 'The freight')}
          value={delivery.freight}
          onAccept={(freight) => edit((now) => ({ ...now, freight }))}
        />
        <OptionalNumber
          key={unit}
          label="Invoice says"
          hint={unit === 'm3' ? 'm³' : 'board feet'}
          value={invoicedVolume(delivery)}
          check={(value) => badNumber('', 'The invoice', value, unit, { least: 0, most: 1e5 })}
          onAccept={(typed) => edit((now) => withOptional(now, 'invoiceBoardFeet', recordedVolume(now, typed)))}
        />
        <OptionalNumber
          {...sum('Invoice total', 'The total')}
          value={delivery.invoiceTotal}
          onAccept={(total) => edit((now) => withOptional(now, 'invoiceTotal', total))}
        />
      </div>
      <div class="buttons">
        <Button onClick={remove}>Delete the delivery</Button>
        <span class="soft small">Its boards stay.</span>
      </div>
    </Card>
  );
}
