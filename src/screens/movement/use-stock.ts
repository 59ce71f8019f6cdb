import { useLive } from '../../app/live.ts';
import type { Piece } from '../../store/records/piece.ts';
import { readStock, type StockReading } from './stock-reading.ts';

/** What the piece's stock read last; null without any reading, undefined until that is known. */
export function useStock(piece: Piece | null | undefined): StockReading | null | undefined {
  const key = piece ? [piece.id, ...piece.parts.map(({ species }) => species)].join('/') : '';
  return useLive(['board'], async () => (piece ? readStock(piece) : undefined), key);
}
