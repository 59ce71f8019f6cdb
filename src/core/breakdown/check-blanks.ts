import { firstBad } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { type Problem, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { CutBlank } from './problem-types.ts';
import { lengths, size } from './sizes.ts';

interface Among {
  readonly boards: readonly { readonly id: string; readonly length: number }[];
  readonly parts: readonly { readonly id: string; readonly quantity: number }[];
}

/** Rounding that the places of blanks are forgiven, mm. */
const forgiven = 0.01;

/** What is asked for by a name that nothing has. */
export const unknown = (what: 'board' | 'part' | 'panel', id: string, field = ''): Problem =>
  problem(field, `There is no ${what} ${id}.`);

/**
 * What is wrong with blanks: unknown names, or a place they can't have.
 *
 * @param blanks with their strips, mm
 * @param path of their list
 * @param among the boards that they lie on and the parts that they are for, mm
 * @returns the first problem along the boards, or undefined when there is none
 * @valid blanks of any plan; rounding is forgiven
 * @example checkBlanks([blank('B1', 0, 500), blank('B1', 400, 500)], 'cut', smallProblem) // => { field: 'cut.1.start' }
 * @source the statement of the problem
 */
export function checkBlanks(blanks: readonly CutBlank[], path: string, among: Among): Problem | undefined {
  const ends = new Map<string, number>();
  const ordered = blanks
    .map((blank, index) => ({ ...blank, at: `${path}.${index}.` }))
    .sort((a, b) => a.start - b.start);
  for (const { board: id, start, length, strips, at } of ordered) {
    const board = among.boards.find((one) => one.id === id);
    if (!board) return unknown('board', id, `${at}board`);
    const end = start + length;
    if (!(start >= 0 && length > 0 && end <= board.length + forgiven))
      return problem(`${at}length`, phrase`A blank lies outside board ${id} (${mm(board.length)} long).`);
    if (start < (ends.get(id) ?? 0) - forgiven)
      return problem(`${at}start`, phrase`Two blanks overlap on board ${id} at ${mm(start)}.`);
    ends.set(id, end);
    for (const [place, strip] of strips.entries()) {
      const path = `${at}strips.${place}.`;
      const part = among.parts.find((one) => one.id === strip.part);
      if (!strip.spoilt && !part) return unknown('part', strip.part, `${path}part`);
      if (!strip.spoilt && part && !(Number.isInteger(strip.unit) && strip.unit >= 1 && strip.unit <= part.quantity))
        return problem(`${path}unit`, `${part.id} has no unit ${strip.unit}.`);
      const wrong = firstBad(lengths(strip, ['width'], size, { path, of: ' of a strip' }));
      if (wrong) return wrong;
    }
  }
  return undefined;
}
