import { isProblem } from '../../core/answer/problem.ts';
import { boardFeet, m3 } from '../../core/answer/quantity.ts';
import { addedUp } from '../../core/lumber/added-up.ts';
import { boardFeetByRule } from '../../core/lumber/board-feet.ts';
import { exactVolume } from '../../core/lumber/exact-volume.ts';
import type { HalfGoes } from '../../core/lumber/round-half.ts';
import type { Tally } from '../../core/lumber/tally.ts';
import type { Board } from '../../store/records/board.ts';

/** What one board holds, as it counts in the tally of the whole rack. */
export interface Amounts {
  readonly boardFeet: number;
  readonly exactBoardFeet: number;
  readonly cubicMetres: number;
}

export type Sums = Pick<Tally, 'boardFeet' | 'exactBoardFeet' | 'cubicMetres'>;

interface Counted extends Amounts {
  readonly halfGoes: HalfGoes;
}

const none: Amounts = { boardFeet: 0, exactBoardFeet: 0, cubicMetres: 0 };
const known = { up: new WeakMap<Board, Counted>(), down: new WeakMap<Board, Counted>() };

/** A board as it stands is counted once; a board whose sizes can't be counts for nothing. */
function counted(board: Board, halfGoes: HalfGoes): Counted {
  const before = known[halfGoes].get(board);
  if (before) return before;
  const rule = boardFeetByRule(board, halfGoes);
  const exact = exactVolume(board);
  const found =
    isProblem(rule) || isProblem(exact)
      ? { ...none, halfGoes }
      : {
          boardFeet: rule.value,
          exactBoardFeet: exact.boardFeet.value,
          cubicMetres: exact.cubicMetres.value,
          halfGoes: rule.halfGoes,
        };
  known[halfGoes].set(board, found);
  return found;
}

/** So many boards are counted within one frame. */
const slice = 500;

/**
 * Counts every board of the rack, exact halves alternately up and down in the order of the boards. `pause` is waited for
 * after each slice, so that thousands of boards don't hold up the screen; it may end the work by giving false.
 */
export async function countRack(
  boards: readonly Board[],
  pause: () => Promise<boolean>,
): Promise<ReadonlyMap<Board, Amounts> | undefined> {
  const amounts = new Map<Board, Amounts>();
  let halfGoes: HalfGoes = 'up';
  for (const [at, board] of boards.entries()) {
    if (at > 0 && at % slice === 0 && !(await pause())) return undefined;
    const found = counted(board, halfGoes);
    halfGoes = found.halfGoes;
    amounts.set(board, found);
  }
  return amounts;
}

/** The sums of some of the boards. */
export function sumsOf(boards: readonly Board[], amounts: ReadonlyMap<Board, Amounts>): Sums {
  const each = boards.map((board) => amounts.get(board) ?? none);
  const values = (figure: keyof Amounts) => each.map((one) => one[figure]);
  return {
    boardFeet: addedUp('board feet', values('boardFeet'), boardFeet, ['nhla']),
    exactBoardFeet: addedUp('exact board feet', values('exactBoardFeet'), boardFeet, ['geometry', 'nist-sp811']),
    cubicMetres: addedUp('volume', values('cubicMetres'), m3, ['geometry']),
  };
}
