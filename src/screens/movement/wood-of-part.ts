import type { Wood } from '../../core/movement/part-movement.ts';
import type { Part } from '../../store/records/piece.ts';
import { woodById } from '../../ui/wood-by-id.ts';

/** What the core needs to know of a part's wood. A species without figures has none: the core then says which are missing. */
export function woodOfPart(part: Part): Wood {
  return { figures: woodById(part.species) ?? {}, cut: part.cut ?? 'flat' };
}
