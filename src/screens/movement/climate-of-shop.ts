import type { Air } from '../../core/moisture/equilibrium-moisture.ts';
import type { Shop } from '../../store/records/shop.ts';
import { type Climate, climates } from '../../tables/climates.ts';

const first = climates[0] as Climate;

/** The air of both seasons: the shop's, or the first preset until the maker says otherwise. */
export function climateOfShop({ climate }: Pick<Shop, 'climate'>): { readonly dry: Air; readonly wet: Air } {
  return { dry: climate?.dry ?? first.dry, wet: climate?.damp ?? first.wet };
}

/** The preset whose air this is; empty when the figures are the maker's own. */
export function presetOf({ dry, wet }: { readonly dry: Air; readonly wet: Air }): string {
  const same = (a: Air, b: Air) => a.celsius === b.celsius && a.humidity === b.humidity;
  return climates.find((preset) => same(preset.dry, dry) && same(preset.wet, wet))?.id ?? '';
}
