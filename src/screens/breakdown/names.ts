import type { Blank, BreakdownPlan, BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import { speciesName } from '../../ui/species-name.ts';

/** What the maker calls the boards and parts of a plan, by id. */
export interface Names {
  board(id: string): string;
  part(id: string): string;
  /** A part, and which of its pieces where it has several. */
  piece(id: string, unit: number): string;
}

export function namesOf(piece: Piece, rack: readonly Board[]): Names {
  const boards = unique(rack.map(({ id, chalk }) => [id, chalk]));
  const parts = unique(piece.parts.map(({ id, name }) => [id, name]));
  const several = new Set(piece.parts.filter(({ quantity }) => quantity > 1).map(({ id }) => id));
  const part = (id: string) => parts.get(id) ?? 'a deleted part';
  return {
    board: (id) => boards.get(id) ?? `gone ${id.slice(0, 4)}`,
    part,
    piece: (id, unit) => (several.has(id) ? `${part(id)} ${unit}` : part(id)),
  };
}

/** Names that two things share are counted: `Side`, `Side (2)`. */
function unique(named: readonly (readonly [id: string, name: string])[]): Map<string, string> {
  const times = new Map<string, number>();
  return new Map(
    named.map(([id, name]) => {
      const time = (times.get(name) ?? 0) + 1;
      times.set(name, time);
      return [id, time === 1 ? name : `${name} (${time})`];
    }),
  );
}

const renamed = <T extends Blank>(blank: T, names: Names): T => ({
  ...blank,
  board: names.board(blank.board),
  strips: blank.strips.map((strip) => ({ ...strip, part: names.part(strip.part) })),
});

/** A problem in the maker's own names, for what the core says about it. */
export function namedProblem(asked: BreakdownProblem, names: Names): BreakdownProblem {
  const { keepOut = [], fix = [], together = [], show = [], ...rest } = asked.wishes ?? {};
  return {
    ...asked,
    boards: asked.boards.map((board) => ({
      ...board,
      id: names.board(board.id),
      species: speciesName(board.species),
    })),
    parts: asked.parts.map((part) => ({ ...part, id: names.part(part.id), species: speciesName(part.species) })),
    wishes: {
      ...rest,
      keepOut: keepOut.map(names.board),
      fix: fix.map(({ part, board }) => ({ part: names.part(part), board: names.board(board) })),
      together: together.map((wish) => ({ ...wish, part: names.part(wish.part) })),
      show: show.map(names.part),
    },
    ...(asked.cut && { cut: asked.cut.map((blank) => renamed(blank, names)) }),
  };
}

export const namedPlan = ({ blanks, short }: BreakdownPlan, names: Names): BreakdownPlan => ({
  blanks: blanks.map((blank) => renamed(blank, names)),
  short: short.map((entry) => ({ ...entry, part: names.part(entry.part) })),
});
