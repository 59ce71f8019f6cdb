import { badNumber } from '../answer/bad-number.ts';
import { firstWithin } from '../answer/first-within.ts';
import { type Problem, problem } from '../answer/problem.ts';
import { unknown } from './check-blanks.ts';
import type { BreakdownProblem, Part } from './problem-types.ts';

/** What contradicts itself in the maker's wishes, or names what isn't there. */
export function checkWishes(asked: BreakdownProblem): Problem | undefined {
  const { boards, parts, shop, wishes = {} } = asked;
  const { keepOut = [], fix = [], together = [], show = [] } = wishes;
  const found = {
    board: new Map(boards.map((board) => [board.id, board])),
    part: new Map(parts.map((part) => [part.id, part])),
  };
  return (
    firstWithin(keepOut, 'wishes.keepOut', (id) => (found.board.has(id) ? undefined : unknown('board', id))) ??
    (boards.every(({ id }) => keepOut.includes(id))
      ? problem('wishes.keepOut', 'Every board is kept out. Delete one wish.')
      : undefined) ??
    firstWithin(fix, 'wishes.fix', (wish) => {
      const board = found.board.get(wish.board);
      const part = found.part.get(wish.part);
      if (!board) return unknown('board', wish.board, 'board');
      if (!part) return unknown('part', wish.part, 'part');
      if (keepOut.includes(board.id))
        return problem('board', `Board ${board.id} is fixed to ${part.id} and kept out. Delete one wish.`);
      if (board.species !== part.species)
        return problem('board', `Board ${board.id} is ${board.species}, but ${part.id} is ${part.species}.`);
      return board.length < part.length + shop.lengthAllowance
        ? problem('board', `Board ${board.id} is too short for ${part.id}.`)
        : undefined;
    }) ??
    firstWithin(together, 'wishes.together', ({ part, boards: most }, index) => {
      if (!found.part.get(part)?.panel) return unknown('panel', part, 'part');
      if (together.findIndex((other) => other.part === part) < index)
        return problem('part', `${part} is kept together twice. Delete one wish.`);
      return badNumber('boards', `The number of boards for ${part}`, most, 'count', { least: 1, whole: true });
    }) ??
    firstWithin(show, 'wishes.show', (id) => {
      const part = found.part.get(id);
      return part ? noGoodFace(asked, part) : unknown('part', id);
    })
  );
}

/** Why a part that is to show can't come from any board with a good face. */
function noGoodFace({ boards, wishes }: BreakdownProblem, { id: part, species }: Part): Problem | undefined {
  const { keepOut = [], fix = [] } = wishes ?? {};
  const good = boards.filter((board) => board.goodFace && board.species === species);
  if (good.length === 0)
    return problem('', `No board of ${species} is marked with a good face for ${part}. Mark one, or delete the wish.`);
  const left = good.filter(({ id }) => !keepOut.includes(id));
  if (left.length === 0) return problem('', `Every board with a good face for ${part} is kept out. Delete one wish.`);
  const fixed = fix.filter((wish) => wish.part === part);
  return fixed.length > 0 && !left.some(({ id }) => fixed.some(({ board }) => board === id))
    ? problem('', `${part} is fixed to boards without a good face. Delete one wish.`)
    : undefined;
}
