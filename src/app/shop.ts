import { onChange } from '../store/changes.ts';
import { remember, remembered } from '../store/local-memory.ts';
import { defaultShop, type Shop } from '../store/records/shop.ts';
import { readShop } from '../store/shop.ts';
import { ownWoods } from '../ui/own-woods.ts';
import { signal } from '../ui/signal.ts';
import { units } from '../ui/units.ts';

/** What the look hangs on, at hand before the database is open, so that a cold start neither waits for it nor flickers. */
const lookKey = 'look';

/** The shop as it stands; the default one until it is read. Its units, theme and hand rule every screen. */
export const shop = signal<Shop>(defaultShop(0));

function apply(next: Shop): void {
  shop.value = next;
  units.value = next.units;
  ownWoods.value = next.woods ?? [];
  const { dataset } = document.documentElement;
  if (next.theme) dataset.theme = next.theme;
  else delete dataset.theme;
  dataset.hand = next.hand ?? 'right';
}

/** Shows the look of last time at once, then reads the shop and follows its changes. */
export async function followShop(): Promise<void> {
  apply({ ...shop.value, ...remembered<Partial<Shop>>(lookKey, {}) });
  const read = async () => {
    const stored = await readShop();
    apply(stored);
    const { units, theme, hand } = stored;
    remember(lookKey, { units, theme, hand });
  };
  onChange(['shop'], () => void read());
  // Opening the database waits until the first screen stands.
  await new Promise((done) => setTimeout(done));
  await read();
}
