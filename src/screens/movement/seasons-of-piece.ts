import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { airOverTime } from '../../core/moisture/air-over-time.ts';
import { seasonMoisture } from '../../core/movement/season-moisture.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import { latestAir } from '../../store/records/air-now.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Shop } from '../../store/records/shop.ts';
import { interiorTargets } from '../../tables/interior-targets.ts';
import { day } from '../../ui/day.ts';
import { climateOf } from './climate-of.ts';
import type { StockReading } from './stock-reading.ts';

/** What wood for most rooms should have: taken until the piece, its boards or the shop's air have been read. */
const assumedToday = interiorTargets[0]?.percent ?? 8;

export interface PieceSeasons extends Seasons {
  /** Where today's moisture comes from. */
  readonly from: string;
}

/**
 * Moisture of the piece's wood in both seasons where it will live, and today: the newest that was typed in for the piece or
 * read on its stock, or else what the shop's air holds wood at.
 */
export function seasonsOfPiece(
  piece: Pick<Piece, 'reading' | 'climate'>,
  shop: Pick<Shop, 'climate' | 'air'>,
  stock: StockReading | null | undefined,
  now: number,
): Outcome<Worked<PieceSeasons>> {
  const moisture = seasonMoisture(climateOf(piece, shop));
  if (isProblem(moisture)) return moisture;
  const { value, working } = moisture;
  const { reading } = piece;
  const read = (percent: number, from: string) => ({ value: { ...value, today: percent, from }, working });
  if (stock && !(reading && reading.at > stock.at)) return read(stock.percent, `${stock.board}, ${day(stock.at)}`);
  if (reading) return read(reading.percent, `as typed, ${day(reading.at)}`);
  const air = airOverTime(shop.air ?? [], now);
  if (isProblem(air)) return read(assumedToday, 'assumed');
  const today = air.working.steps.map((step) => ({ ...step, finds: 'moisture today, by the shop’s air' }));
  return {
    value: { ...value, today: air.value, from: `by the shop’s air, ${day(latestAir(shop)?.at ?? now)}` },
    working: { ...working, steps: [...today, ...working.steps], sources: air.working.sources },
  };
}
