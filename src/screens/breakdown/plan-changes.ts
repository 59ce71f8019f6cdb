import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import { howMany } from '../../ui/how-many.ts';
import { isCut } from './cut-state.ts';
import type { Names } from './names.ts';
import { usableFor } from './problem-from-records.ts';
import { solvedProblem } from './solved-problem.ts';

const sizes = ['species', 'quantity', 'length', 'width', 'thickness', 'panel'] as const;

/** What has changed since a plan was made, so that it no longer fits, in a few words each. */
export function planChanges(plan: Plan, piece: Piece, rack: readonly Board[], names: Names): string[] {
  const asked = solvedProblem(plan);
  const before = new Map(asked.parts.map((part) => [part.id, part]));
  const parts = piece.parts.flatMap((part) => {
    const planned = before.get(part.id);
    if (!planned) return [`${names.of(part.id)} is new.`];
    return sizes.some((size) => planned[size] !== part[size]) ? [`${names.of(part.id)} has changed.`] : [];
  });
  const gone = asked.parts.filter(({ id }) => !piece.parts.some((part) => part.id === id));
  const usable = new Set(usableFor(piece, rack).map(({ id }) => id));
  const used = new Set(plan.blanks.map(({ board }) => board));
  const missing = [...used].filter((id) => !usable.has(id) && !isCut(plan, id) && !wasCut(plan, id));
  return [
    ...parts,
    ...(gone.length > 0 ? [`${howMany(gone.length, 'part')} deleted.`] : []),
    ...missing.map((id) => `Board ${names.of(id)} is no longer in the rack.`),
  ];
}

const wasCut = (plan: Plan, boardId: string) =>
  solvedProblem(plan).cut?.some(({ board }) => board === boardId) ?? false;
