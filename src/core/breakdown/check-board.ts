import { type Problem, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import { clearStretches } from './clear-stretches.ts';
import type { RoughBoard } from './problem-types.ts';
import { badAllowance, badSize } from './sizes.ts';

/** What is wrong with one board: sizes that are none, or clear stretches that leave it or overlap. Fields are the board's own. */
export function checkBoard(board: RoughBoard): Problem | undefined {
  const said = (name: string) => `The ${name} of board ${board.id}`;
  for (const name of ['thickness', 'width', 'length'] as const) {
    const wrong = badSize(name, said(name), board[name]);
    if (wrong) return wrong;
  }
  for (const name of ['cup', 'bow'] as const) {
    const wrong = badAllowance(name, said(name), board[name]);
    if (wrong) return wrong;
  }
  return board.clear && checkClear(board);
}

function checkClear(board: RoughBoard): Problem | undefined {
  let end = 0;
  for (const clear of clearStretches(board)) {
    const { start, length, offset, width } = clear;
    const sensible =
      [start, length, offset, width].every(Number.isFinite) && start >= 0 && length > 0 && offset >= 0 && width > 0;
    if (!sensible) return problem('clear', `A clear stretch of board ${board.id} has no length or width.`);
    if (start + length > board.length || offset + width > board.width)
      return problem('clear', `A clear stretch of board ${board.id} reaches beyond the board ({length} by {width}).`, {
        length: mm(board.length),
        width: mm(board.width),
      });
    if (start < end)
      return problem('clear', `Clear stretches of board ${board.id} overlap at {start}.`, {
        start: mm(start),
      });
    end = start + length;
  }
  return undefined;
}
