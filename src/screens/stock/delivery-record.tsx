import { undoable } from '../../app/notices.ts';
import { go } from '../../app/routes.ts';
import { deliveries } from '../../store/deliveries.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { Choice, optionsOf } from '../../ui/fields.tsx';
import { OptionalNumber, SettledNumber, SettledText } from '../../ui/settled.tsx';
import { DayField } from './day-field.tsx';
import { invoicedVolume, pricedUnit, recordedVolume } from './priced-unit.ts';

/** Who brought it, when, and what it is said to cost; kept as it is typed. */
const sum = { unit: 'money', limits: { least: 0, most: 1e6 } } as const;

export function DeliveryRecord({ delivery }: { delivery: Delivery }) {
  const edit = (change: (now: Delivery) => Delivery) => deliveries.edit(delivery.id, change);
  const unit = pricedUnit(delivery);
  // Its boards still name it: it may come back. Until then they are of none.
  const remove = () => {
    go('stock');
    void undoable(deliveries.remove(delivery.id), 'Delivery deleted; its boards stay.');
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
          label="Price"
          {...sum}
          hint={unit === 'm3' ? 'per m³' : 'per board foot'}
          value={delivery.price.amount}
          onAccept={(amount) => edit((now) => ({ ...now, price: { ...now.price, amount } }))}
        />
        <SettledNumber
          label="Freight"
          {...sum}
          value={delivery.freight}
          onAccept={(freight) => edit((now) => ({ ...now, freight }))}
        />
        <OptionalNumber
          key={unit}
          label="Invoice says"
          hint={unit === 'm3' ? 'm³' : 'board feet'}
          value={invoicedVolume(delivery)}
          unit={unit}
          limits={{ least: 0, most: 1e5 }}
          onAccept={(typed) => edit((now) => withOptional(now, 'invoiceBoardFeet', recordedVolume(now, typed)))}
        />
        <OptionalNumber
          label="Invoice total"
          {...sum}
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
