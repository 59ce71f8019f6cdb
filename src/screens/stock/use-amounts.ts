import { useEffect, useState } from 'preact/hooks';
import type { Board } from '../../store/records/board.ts';
import { pause } from './pause.ts';
import { type Amounts, countRack } from './rack-amounts.ts';

/** What each board of the rack holds; undefined while it is counted for the first time. */
export function useAmounts(boards: readonly Board[]): ReadonlyMap<Board, Amounts> | undefined {
  const [amounts, setAmounts] = useState<ReadonlyMap<Board, Amounts>>();
  useEffect(() => {
    let over = false;
    void countRack(boards, async () => {
      await pause();
      return !over;
    }).then((found) => !over && found && setAmounts(found));
    return () => {
      over = true;
    };
  }, [boards]);
  return amounts;
}
