import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import { howMany } from '../../ui/how-many.ts';
import { isCut } from './cut-state.ts';
import type { Names } from './names.ts';
import { asked, usableFor } from './problem-from-records.ts';
import { needOf, roughBoard } from './rough-board.ts';
import { solvedProblem } from './solved-problem.ts';

/** What has changed since a plan was made, so that it no longer fits, in a few words each. */
export function planChanges(plan: Plan, piece: Piece, rack: readonly Board[], names: Names): string[] {
  const solved = solvedProblem(plan);
  const before = new Map(solved.parts.map((part) => [part.id, part]));
  const parts = piece.parts.flatMap((part) => {
    const planned = before.get(part.id);
    if (!planned) return [`${names.of(part.id)} is new.`];
    return asked.some((property) => planned[property] !== part[property]) ? [`${names.of(part.id)} has changed.`] : [];
  });
  const gone = solved.parts.filter(({ id }) => !piece.parts.some((part) => part.id === id));
  const need = needOf(solved.shop, solved.parts, solved.wishes ?? {});
  const usable = usableFor(piece, rack);
  const open = solved.boards.filter(
    ({ id }) =>
      plan.blanks.some(({ board }) => board === id) &&
      !isCut(plan, id) &&
      !solved.cut?.some(({ board }) => board === id),
  );
  const boards = open.flatMap((planned) => {
    const { id, goodFace } = planned;
    const stored = usable.find((board) => board.id === id);
    const now = stored && { ...roughBoard(stored, need), goodFace };
    if (JSON.stringify(now) === JSON.stringify(planned)) return [];
    return [`Board ${names.of(id)} ${now ? 'has changed' : 'is no longer in the rack'}.`];
  });
  return [...parts, ...(gone.length > 0 ? [`${howMany(gone.length, 'part')} deleted.`] : []), ...boards];
}
