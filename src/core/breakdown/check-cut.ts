import { type Problem, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { BreakdownProblem } from './problem-types.ts';
import { badSize } from './sizes.ts';

/** What is wrong with the blanks that are said to be cut already: unknown names, or a place they can't have. */
export function checkCut(asked: BreakdownProblem): Problem | undefined {
  const boards = new Map(asked.boards.map((board) => [board.id, board]));
  const parts = new Map(asked.parts.map((part) => [part.id, part]));
  const ends = new Map<string, number>();
  const ordered = [...(asked.cut ?? [])]
    .map((blank, index) => ({ blank, index }))
    .sort((a, b) => a.blank.start - b.blank.start);
  for (const { blank, index } of ordered) {
    const field = `cut.${index}`;
    const board = boards.get(blank.board);
    if (!board) return problem(`${field}.board`, `There is no board ${blank.board}.`);
    const end = blank.start + blank.length;
    if (!(blank.start >= 0 && blank.length > 0 && end <= board.length))
      return problem(field, `A cut blank lies outside board ${board.id} ({length} long).`, {
        length: mm(board.length),
      });
    if (blank.start < (ends.get(board.id) ?? 0))
      return problem(field, `Two cut blanks overlap on board ${board.id} at {start}.`, {
        start: mm(blank.start),
      });
    ends.set(board.id, end);
    for (const [at, strip] of blank.strips.entries()) {
      const part = parts.get(strip.part);
      if (!strip.spoilt && !part) return problem(`${field}.strips.${at}.part`, `There is no part ${strip.part}.`);
      if (!strip.spoilt && part && !(Number.isInteger(strip.unit) && strip.unit >= 1 && strip.unit <= part.quantity))
        return problem(`${field}.strips.${at}.unit`, `${part.id} has no unit ${strip.unit}.`);
      const wrong = badSize(`${field}.strips.${at}.width`, 'The width of a strip', strip.width);
      if (wrong) return wrong;
    }
  }
  return undefined;
}
