import { routeTo } from '../../app/routes.ts';
import type { BreakdownProblem } from '../../core/breakdown/problem-types.ts';

/** The place where what stands in the planner's way can be put right. */
export interface Way {
  readonly href: string;
  readonly label: string;
}

/** @param field of a problem with `asked`, for example `parts.3.length`. Most wishes stand on this screen already. */
export function whereToFix(field: string, asked: BreakdownProblem, pieceId: string): Way | undefined {
  const [where, at] = field.split('.');
  if (where === 'shop') return { href: routeTo('shop'), label: 'Change the shop' };
  if (where === 'parts') return { href: routeTo('piece', pieceId), label: 'Change the parts' };
  if (where === 'wishes' && at === 'show') return { href: routeTo('stock'), label: 'Open the rack' };
  if (where === 'boards') {
    const board = asked.boards[Number(at)];
    return board
      ? { href: routeTo('stock', board.id), label: 'Change the board' }
      : { href: routeTo('stock'), label: 'Log boards' };
  }
  return undefined;
}
