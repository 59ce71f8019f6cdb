import { boards } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import { latestReading } from '../stock/corrected-readings.ts';

/** What a board of the piece's stock read last, percent. */
export interface StockReading {
  readonly at: number;
  readonly percent: number;
  /** Which board it was. */
  readonly board: string;
}

/** The newest reading of the boards set aside for a piece, or else of those in the rack of its woods; null without any. */
export async function readStock({ id, parts }: Pick<Piece, 'id' | 'parts'>): Promise<StockReading | null> {
  const own = newestReading(await boards.where('pieceId', id), 'board');
  if (own) return own;
  const woods = [...new Set(parts.map(({ species }) => species))];
  const alike = (await Promise.all(woods.map((wood) => boards.where('species', wood)))).flat();
  const inRack = alike.filter(({ state }) => state === 'rack' || state === 'setAside');
  return newestReading(inRack, 'rack, board') ?? null;
}

function newestReading(some: readonly Board[], called: string): StockReading | undefined {
  let newest: StockReading | undefined;
  for (const board of some) {
    const read = latestReading(board);
    if (read && (!newest || read.at > newest.at))
      newest = { at: read.at, percent: read.percent, board: `${called} ${board.chalk}` };
  }
  return newest;
}
