import type { OwnWood } from '../store/records/shop.ts';
import { type Species, speciesById } from '../tables/species.ts';
import { ownWoods } from './own-woods.ts';

type Wood = Pick<Species, 'coefficients' | 'shrinkage' | 'specificGravity' | 'pores'>;

/** A wood's figures: the table's, or those that the maker typed in for it. */
export function woodById(id: string): Wood | undefined {
  const own = ownWoods.value.find(({ name }) => name === id);
  return speciesById(id) ?? (own && woodOf(own));
}

export function woodOf({ radial, tangential, volumetric, gravity, openPores }: OwnWood): Wood {
  return {
    pores: openPores ? 'open' : 'closed',
    shrinkage: {
      ...(radial !== undefined && { radial }),
      ...(tangential !== undefined && { tangential }),
      ...(volumetric !== undefined && { volumetric }),
      source: 'label',
    },
    ...(gravity !== undefined && { specificGravity: { value: gravity, source: 'label' } }),
  };
}
