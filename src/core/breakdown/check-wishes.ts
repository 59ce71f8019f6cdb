import { badNumber } from '../answer/bad-number.ts';
import { type Problem, problem } from '../answer/problem.ts';
import type { BreakdownProblem, Part } from './problem-types.ts';

/** What contradicts itself in the maker's wishes, or names what isn't there. */
export function checkWishes(asked: BreakdownProblem): Problem | undefined {
  const { keepOut = [], fix = [], together = [], show = [] } = asked.wishes ?? {};
  const boards = new Map(asked.boards.map((board) => [board.id, board]));
  const parts = new Map(asked.parts.map((part) => [part.id, part]));
  for (const [index, id] of keepOut.entries())
    if (!boards.has(id)) return problem(`wishes.keepOut.${index}`, `There is no board ${id}.`);
  if (asked.boards.every(({ id }) => keepOut.includes(id)))
    return problem('wishes.keepOut', 'Every board is kept out. Delete one wish.');
  for (const [index, { part: partId, board: boardId }] of fix.entries()) {
    const field = `wishes.fix.${index}`;
    const board = boards.get(boardId);
    const part = parts.get(partId);
    if (!board) return problem(`${field}.board`, `There is no board ${boardId}.`);
    if (!part) return problem(`${field}.part`, `There is no part ${partId}.`);
    if (keepOut.includes(boardId))
      return problem(`${field}.board`, `Board ${boardId} is fixed to ${partId} and kept out. Delete one wish.`);
    if (board.species !== part.species)
      return problem(`${field}.board`, `Board ${boardId} is ${board.species}, but ${partId} is ${part.species}.`);
    if (board.length < part.length + asked.shop.lengthAllowance)
      return problem(`${field}.board`, `Board ${boardId} is too short for ${partId}.`);
  }
  for (const [index, { part: partId, boards: most }] of together.entries()) {
    const field = `wishes.together.${index}`;
    const part = parts.get(partId);
    if (!part?.panel) return problem(`${field}.part`, `There is no panel ${partId}.`);
    const wrong = badNumber(`${field}.boards`, `The number of boards for ${partId}`, most, 'count', {
      least: 1,
      whole: true,
    });
    if (wrong) return wrong;
    const again = together.findIndex((other) => other.part === partId);
    if (again !== index) return problem(`${field}.part`, `${partId} is kept together twice. Delete one wish.`);
  }
  for (const [index, partId] of show.entries()) {
    const part = parts.get(partId);
    if (!part) return problem(`wishes.show.${index}`, `There is no part ${partId}.`);
    const wrong = noGoodFace(asked, part);
    if (wrong) return problem(`wishes.show.${index}`, wrong);
  }
  return undefined;
}

/** Why a part that is to show can't come from any board with a good face. */
function noGoodFace({ boards, wishes }: BreakdownProblem, part: Part): string | undefined {
  const { keepOut = [], fix = [] } = wishes ?? {};
  const good = boards.filter(({ species, goodFace }) => goodFace && species === part.species);
  if (good.length === 0)
    return `No board of ${part.species} is marked with a good face for ${part.id}. Mark one, or delete the wish.`;
  const left = good.filter(({ id }) => !keepOut.includes(id));
  if (left.length === 0) return `Every board with a good face for ${part.id} is kept out. Delete one wish.`;
  const fixed = fix.filter((wish) => wish.part === part.id).map(({ board }) => board);
  return fixed.length > 0 && !left.some(({ id }) => fixed.includes(id))
    ? `${part.id} is fixed to boards without a good face. Delete one wish.`
    : undefined;
}
