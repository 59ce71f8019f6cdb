import type { BreakdownProblem } from './problem-types.ts';

/** Which boards may serve which parts, by their place in the lists: species, boards kept out, boards fixed to a part. */
export function supplyRule({
  boards,
  parts,
  wishes = {},
}: BreakdownProblem): (partAt: number, boardAt: number) => boolean {
  const { keepOut = [], fix = [] } = wishes;
  const allowed = parts.map((part) => {
    const fixed = fix.filter((wish) => wish.part === part.id).map((wish) => wish.board);
    return boards.map(
      ({ id, species }) =>
        species === part.species && !keepOut.includes(id) && (fixed.length === 0 || fixed.includes(id)),
    );
  });
  return (partAt, boardAt) => allowed[partAt]?.[boardAt] ?? false;
}

/** Which boards have too plain a face for which parts: parts that are wished to show, and boards without a good face. */
export function plainRule({
  boards,
  parts,
  wishes = {},
}: BreakdownProblem): (partAt: number, boardAt: number) => boolean {
  const shows = parts.map(({ id }) => wishes.show?.includes(id) ?? false);
  return (partAt, boardAt) => shows[partAt] === true && boards[boardAt]?.goodFace !== true;
}
