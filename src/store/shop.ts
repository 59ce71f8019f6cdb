import { defaultShop, type Shop, shopId } from './records/shop.ts';
import { repository } from './repository.ts';

const shops = repository('shop');

/** The shop as the maker has set it, or the default one (revision 0) before that. */
export async function readShop(): Promise<Shop> {
  return (await shops.get(shopId)) ?? defaultShop(Date.now());
}

/** Edits the shop as it is stored now. */
export async function changeShop(edit: (shop: Shop) => Shop): Promise<Shop> {
  return (await shops.change(shopId, edit)) ?? shops.put(edit(defaultShop(Date.now())));
}
