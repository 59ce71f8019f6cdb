import { phrase } from '../answer/phrase.ts';
import { type Problem, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import { clearStretches } from './clear-stretches.ts';
import type { RoughBoard } from './problem-types.ts';

/** What is wrong with the clear stretches of a board: they leave it, overlap, or are none. */
export function checkClear(board: RoughBoard): Problem | undefined {
  let end = 0;
  for (const { start, length, offset, width } of clearStretches(board)) {
    if (!(start >= 0 && length > 0 && offset >= 0 && width > 0))
      return problem('clear', `A clear stretch of board ${board.id} has no length or width.`);
    if (!(start + length <= board.length && offset + width <= board.width))
      return problem(
        'clear',
        phrase`A clear stretch of board ${board.id} reaches beyond the board (${mm(board.length)} by ${mm(board.width)}).`,
      );
    if (start < end) return problem('clear', phrase`Clear stretches of board ${board.id} overlap at ${mm(start)}.`);
    end = start + length;
  }
  return undefined;
}
