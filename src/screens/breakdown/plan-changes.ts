import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import { howMany } from '../../ui/how-many.ts';
import { isCut } from './cut-state.ts';
import type { Names } from './names.ts';
import { asked, usableFor } from './problem-from-records.ts';
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
  const usable = new Set(usableFor(piece, rack).map(({ id }) => id));
  const used = new Set(plan.blanks.map(({ board }) => board));
  const missing = [...used].filter(
    (id) => !usable.has(id) && !isCut(plan, id) && !solved.cut?.some(({ board }) => board === id),
  );
  return [
    ...parts,
    ...(gone.length > 0 ? [`${howMany(gone.length, 'part')} deleted.`] : []),
    ...missing.map((id) => `Board ${names.of(id)} is no longer in the rack.`),
  ];
}
