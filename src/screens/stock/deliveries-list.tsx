import { useAll } from '../../app/live.ts';
import { go, routeTo } from '../../app/routes.ts';
import { deliveries } from '../../store/deliveries.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { day } from '../../ui/day.ts';
import { Fold } from '../../ui/fold.tsx';
import { today } from './today.ts';

/** So many of the newest stand in sight. */
const few = 2;

/** What came when, and the way to begin the next one. */
export function DeliveriesList() {
  const all = useAll(deliveries) ?? [];
  const sorted = all.toSorted((a, b) => b.date.localeCompare(a.date) || b.created - a.created);
  const begin = () =>
    deliveries
      .add({ supplier: '', date: today(Date.now()), price: { per: 'boardFoot', amount: 0 }, freight: 0 })
      // What isn't stored is kept and shown by the shell.
      .then(
        ({ id }) => go('stock', id),
        () => {},
      );
  return (
    <Card title="Deliveries">
      <Rows of={sorted.slice(0, few)} />
      {sorted.length > few && (
        <Fold label={<>{sorted.length - few} older</>}>
          <Rows of={sorted.slice(few)} />
        </Fold>
      )}
      <div class="buttons">
        <Button onClick={begin}>Add a delivery</Button>
        <a class="button" href={routeTo('stock', 'list')}>
          List out and in
        </a>
        <a class="button" href={routeTo('stock', 'air')}>
          Air in the shop
        </a>
      </div>
    </Card>
  );
}

function Rows({ of }: { of: readonly Delivery[] }) {
  return (
    <ul class="rows">
      {of.map(({ id, supplier, date }) => (
        <li>
          <a href={routeTo('stock', id)}>{supplier === '' ? 'No supplier' : supplier}</a>
          <span class="soft small">{day(date)}</span>
        </li>
      ))}
    </ul>
  );
}
