import { signal } from '@preact/signals';
import { onChange } from '../store/changes.ts';
import { defaultShop, type Shop } from '../store/records/shop.ts';
import { readShop } from '../store/shop.ts';
import { units } from '../ui/units.ts';

/** The shop as it stands; the default one until it is read. Its units, theme and hand rule every screen. */
export const shop = signal<Shop>(defaultShop(0));

function apply(next: Shop): void {
  shop.value = next;
  units.value = next.units;
  const { dataset } = document.documentElement;
  if (next.theme) dataset.theme = next.theme;
  else delete dataset.theme;
  dataset.hand = next.hand ?? 'right';
}

/** Reads the shop and follows its changes. */
export async function followShop(): Promise<void> {
  const read = async () => apply(await readShop());
  onChange('shop', () => void read());
  await read();
}
