import { useLive } from '../../app/live.ts';
import { readInPages } from '../../store/read-in-pages.ts';
import type { Board } from '../../store/records/board.ts';
import { inLoggedOrder } from './board-order.ts';

async function readRack(): Promise<readonly Board[]> {
  const boards = inLoggedOrder(await readInPages('board'));
  // Sorting thousands, and drawing them, is each a task of its own.
  await new Promise((done) => setTimeout(done));
  return boards;
}

/** All boards in the order they were logged, kept up with every write. Undefined until they are read. */
export const useRack = (): readonly Board[] | undefined => useLive(['board'], readRack);
