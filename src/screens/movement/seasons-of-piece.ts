import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { seasonMoisture } from '../../core/movement/season-moisture.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Shop } from '../../store/records/shop.ts';
import { interiorTargets } from '../../tables/interior-targets.ts';
import { climateOfShop } from './climate-of-shop.ts';

/** What wood for most rooms should have: taken until the maker has read the piece's own. */
const assumedToday = interiorTargets[0]?.percent ?? 8;

/** Moisture of the piece's wood today and in both seasons where it will live. */
export function seasonsOfPiece(piece: Piece, shop: Pick<Shop, 'climate'>): Outcome<Worked<Seasons>> {
  const moisture = seasonMoisture(climateOfShop(shop));
  if (isProblem(moisture)) return moisture;
  return { ...moisture, value: { ...moisture.value, today: piece.reading?.percent ?? assumedToday } };
}
