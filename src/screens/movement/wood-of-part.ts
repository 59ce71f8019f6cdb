import type { Wood } from '../../core/movement/part-movement.ts';
import type { Part } from '../../store/records/piece.ts';
import { speciesById } from '../../tables/species.ts';

/** What the core needs to know of a part's wood. A species without figures has none: the core then says which are missing. */
export function woodOfPart(part: Part): Wood {
  const { coefficients, shrinkage } = speciesById(part.species) ?? {};
  return {
    figures: { ...(coefficients && { coefficients }), ...(shrinkage && { shrinkage }) },
    cut: part.cut ?? 'flat',
  };
}
