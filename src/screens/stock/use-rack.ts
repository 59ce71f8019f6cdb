import { useEffect, useState } from 'preact/hooks';
import { boards } from '../../store/boards.ts';
import { onChange } from '../../store/changes.ts';
import { readInPages } from '../../store/read-in-pages.ts';
import type { Board } from '../../store/records/board.ts';
import { inLoggedOrder } from './board-order.ts';
import { pause } from './pause.ts';

/** More changed boards than this are read afresh, all of them. */
const few = 200;

/**
 * All boards in the order they were logged, kept up with every write. Boards that didn't change stay the same objects,
 * so that what was worked out for them still stands. Undefined until they are read.
 */
export function useRack(): readonly Board[] | undefined {
  const [rack, setRack] = useState<readonly Board[]>();
  useEffect(() => {
    let over = false;
    let now: readonly Board[] = [];
    let turn = Promise.resolve();
    /** One after the other: a late answer never overtakes a newer one. */
    const next = (read: () => Promise<readonly Board[]>) => {
      turn = turn.then(async () => {
        const found = await read();
        if (over) return;
        now = found;
        setRack(found);
      }, undefined);
      turn = turn.catch(() => {});
    };
    const all = async () => {
      const read = await readInPages('board');
      // Sorting thousands, and drawing them, is each a task of its own.
      await pause();
      const sorted = inLoggedOrder(read);
      await pause();
      return sorted;
    };
    next(all);
    const stop = onChange('board', ({ ids }) => {
      if (ids.length === 0 || ids.length > few) return next(all);
      next(async () => {
        const changed = new Set(ids);
        const read = await Promise.all(ids.map((id) => boards.get(id)));
        return inLoggedOrder([
          ...now.filter(({ id }) => !changed.has(id)),
          ...read.filter((board): board is Board => board !== undefined),
        ]);
      });
    });
    return () => {
      over = true;
      stop();
    };
  }, []);
  return rack;
}
