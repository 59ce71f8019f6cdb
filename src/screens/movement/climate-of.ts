import type { Air } from '../../core/moisture/equilibrium-moisture.ts';
import type { Shop } from '../../store/records/shop.ts';
import { type Climate, climates } from '../../tables/climates.ts';

const first = climates[0] as Climate;

type HasClimate = Pick<Shop, 'climate'>;

/** The air of both seasons where a piece will live: its own, or the shop's, or the first preset until the maker says otherwise. */
export function climateOf(piece: HasClimate, shop: HasClimate): { readonly dry: Air; readonly wet: Air } {
  const { dry = first.dry, damp = first.wet } = piece.climate ?? shop.climate ?? {};
  return { dry, wet: damp };
}

/** The preset whose air this is; empty when the figures are the maker's own. */
export function presetOf({ dry, wet }: { readonly dry: Air; readonly wet: Air }): string {
  const same = (a: Air, b: Air) => a.celsius === b.celsius && a.humidity === b.humidity;
  return climates.find((preset) => same(preset.dry, dry) && same(preset.wet, wet))?.id ?? '';
}
