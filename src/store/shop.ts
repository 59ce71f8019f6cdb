import { defaultShop, type Shop, shopId } from './records/shop.ts';
import { repository } from './repository.ts';

const shops = repository('shop');

/** Inches where the language of the phone is at home with them. */
const usualUnit = (): 'in' | 'mm' => (/^en-(US|CA)$/.test(globalThis.navigator?.language ?? '') ? 'in' : 'mm');

/** The shop before the maker has set anything. */
export const freshShop = () => defaultShop(Date.now(), usualUnit());

/** The shop as the maker has set it, or the default one (revision 0) before that. */
export async function readShop(): Promise<Shop> {
  return (await shops.get(shopId)) ?? freshShop();
}

/** Edits the shop as it is stored now, or the fresh one before it is stored at all. */
export const changeShop = (edit: (shop: Shop) => Shop) =>
  shops.change(shopId, (now) => own(edit(now)), freshShop) as Promise<Shop>;

/** What the maker has set doesn't go with the demo. */
const own = ({ demo: _, ...shop }: Shop): Shop => shop;

/** Edits the shop where nobody waits for it: a write that fails is kept and shown by the shell. */
export const editShop = (edit: (shop: Shop) => Shop): void => void changeShop(edit).catch(() => {});
