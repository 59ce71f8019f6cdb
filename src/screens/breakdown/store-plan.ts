import { offerUndo } from '../../app/notices.ts';
import type { BreakdownPlan, BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import { boards } from '../../store/boards.ts';
import { plans } from '../../store/plans.ts';
import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import type { Json } from '../../store/records/record.ts';
import { howMany } from '../../ui/how-many.ts';
import { isCut } from './cut-state.ts';

// The shell keeps and shows what the phone did not take; the screen goes on with what is stored.
const shownByShell = () => {};

const choice = (kept: readonly Plan[], chosen: Plan['id']) =>
  kept
    .filter((plan) => (plan.chosen ?? false) !== (plan.id === chosen))
    .map((plan) => ({ ...plan, chosen: plan.id === chosen }));

/** Keeps a new plan and chooses it; the older ones stay to be compared. */
export async function keepPlan(
  piece: Piece,
  kept: readonly Plan[],
  problem: BreakdownProblem,
  found: BreakdownPlan,
): Promise<void> {
  const fields = { pieceId: piece.id, problem: problem as unknown as Json, ...found };
  const cutDone = problem.boards.map(({ id }) => id).filter((id) => isCut(fields, id));
  try {
    const { id } = await plans.add({ ...fields, cutDone, chosen: true });
    await plans.putMany(choice(kept, id));
  } catch {
    shownByShell();
  }
}

export const choosePlan = (kept: readonly Plan[], id: string): Promise<unknown> =>
  plans.putMany(choice(kept, id)).catch(shownByShell);

export async function removePlan({ id }: Plan): Promise<void> {
  const gone = await plans.remove(id).catch(shownByShell);
  if (gone) offerUndo('Plan deleted.', gone.undo);
}

export const changePlan = (id: string, edit: (now: Plan) => Plan): Promise<unknown> =>
  plans.change(id, edit).catch(shownByShell);

/** Ticks a board as cut, in the plan and in the rack, or takes the tick back. */
export async function tickCut(plan: Plan, boardId: string, cut: boolean): Promise<void> {
  await changePlan(plan.id, (now) => ({
    ...now,
    cutDone: [...(now.cutDone ?? []).filter((id) => id !== boardId), ...(cut ? [boardId] : [])],
  }));
  await boards
    .change(boardId, (board) => ({ ...board, state: cut ? 'cut' : 'setAside', pieceId: plan.pieceId }))
    .catch(shownByShell);
}

/** Keeps boards of the rack for this piece, so that no other plan takes them. */
export async function setAside(free: readonly Board[], piece: Piece): Promise<void> {
  try {
    await boards.putMany(free.map((board) => ({ ...board, state: 'setAside', pieceId: piece.id })));
  } catch {
    return;
  }
  offerUndo(`${howMany(free.length, 'board')} set aside.`, async () => {
    for (const { id } of free) await boards.change(id, ({ pieceId: _, ...now }) => ({ ...now, state: 'rack' }));
  });
}
