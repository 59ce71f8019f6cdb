import { type Problem, problem } from '../answer/problem.ts';
import type { BreakdownProblem } from './problem-types.ts';

/** What contradicts itself in the maker's wishes, or names what isn't there. */
export function checkWishes(asked: BreakdownProblem): Problem | undefined {
  const { keepOut = [], fix = [], together = [] } = asked.wishes ?? {};
  const boards = new Map(asked.boards.map((board) => [board.id, board]));
  const parts = new Map(asked.parts.map((part) => [part.id, part]));
  for (const [index, id] of keepOut.entries())
    if (!boards.has(id)) return problem(`wishes.keepOut.${index}`, `There is no board ${id} to keep out.`);
  if (asked.boards.every(({ id }) => keepOut.includes(id)))
    return problem('wishes.keepOut', 'Every board is kept out. Let at least one be used.');
  for (const [index, { part: partId, board: boardId }] of fix.entries()) {
    const field = `wishes.fix.${index}`;
    const board = boards.get(boardId);
    const part = parts.get(partId);
    if (!board) return problem(`${field}.board`, `There is no board ${boardId} for ${partId}.`);
    if (!part) return problem(`${field}.part`, `There is no part ${partId} for board ${boardId}.`);
    if (keepOut.includes(boardId))
      return problem(`${field}.board`, `Board ${boardId} is fixed to ${partId} and kept out at once. Drop one wish.`);
    if (board.species !== part.species)
      return problem(`${field}.board`, `Board ${boardId} is ${board.species}, but ${partId} is ${part.species}.`);
    if (board.length < part.length + asked.shop.lengthAllowance)
      return problem(`${field}.board`, `Board ${boardId} is too short for ${partId}.`);
  }
  for (const [index, { part: partId, boards: most }] of together.entries()) {
    const field = `wishes.together.${index}`;
    const part = parts.get(partId);
    if (!part?.panel) return problem(`${field}.part`, `There is no panel ${partId} to keep together.`);
    if (!(Number.isInteger(most) && most >= 1))
      return problem(`${field}.boards`, `The number of boards for ${partId} must be a whole number, 1 or more.`);
    const again = together.findIndex((other) => other.part === partId);
    if (again !== index) return problem(`${field}.part`, `Two wishes say how ${partId} is kept together. Drop one.`);
  }
  return undefined;
}
