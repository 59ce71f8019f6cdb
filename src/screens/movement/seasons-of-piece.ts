import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { airOverTime } from '../../core/moisture/air-over-time.ts';
import { seasonMoisture } from '../../core/movement/season-moisture.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Shop } from '../../store/records/shop.ts';
import { interiorTargets } from '../../tables/interior-targets.ts';
import { climateOfShop } from './climate-of-shop.ts';

/** What wood for most rooms should have: taken until the maker has read the piece's own, or the shop's air. */
const assumedToday = interiorTargets[0]?.percent ?? 8;

/** Moisture of the piece's wood today and in both seasons where it will live. Unread, it is what the shop's air holds wood at. */
export function seasonsOfPiece(piece: Piece, shop: Pick<Shop, 'climate' | 'air'>): Outcome<Worked<Seasons>> {
  const moisture = seasonMoisture(climateOfShop(shop));
  if (isProblem(moisture)) return moisture;
  const { value, working } = moisture;
  if (piece.reading) return { value: { ...value, today: piece.reading.percent }, working };
  const air = airOverTime(shop.air ?? []);
  if (isProblem(air)) return { value: { ...value, today: assumedToday }, working };
  const today = air.working.steps.map((step) => ({ ...step, finds: 'moisture today, by the air in the shop' }));
  return {
    value: { ...value, today: air.value },
    working: { ...working, steps: [...today, ...working.steps], sources: air.working.sources },
  };
}
