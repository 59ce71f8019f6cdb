import { undoable } from '../../app/notices.ts';
import type { BreakdownPlan, BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import { boards } from '../../store/boards.ts';
import type { Change } from '../../store/commit.ts';
import { plans } from '../../store/plans.ts';
import type { Reader } from '../../store/reader.ts';
import type { Board } from '../../store/records/board.ts';
import { freshRecord } from '../../store/records/fresh-record.ts';
import { inRack } from '../../store/records/in-rack.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import type { Json } from '../../store/records/record.ts';
import { writeFrom } from '../../store/write.ts';
import { howMany } from '../../ui/how-many.ts';
import { isCut } from './cut-state.ts';

// The shell keeps and shows what the phone did not take; the screen goes on with what is stored.
const shownByShell = () => {};

const choice = async (stored: Reader, pieceId: string, chosen: Plan['id']): Promise<Change[]> =>
  (await stored.where('plan', 'pieceId', pieceId))
    .filter((plan) => (plan.chosen ?? false) !== (plan.id === chosen))
    .map((plan) => ({ kind: 'plan', put: { ...plan, chosen: plan.id === chosen } as Plan }));

/** Keeps a new plan and chooses it; the older ones stay to be compared. */
export async function keepPlan(piece: Piece, problem: BreakdownProblem, found: BreakdownPlan): Promise<void> {
  const fields = { pieceId: piece.id, problem: problem as unknown as Json, ...found };
  const cutDone = problem.boards.map(({ id }) => id).filter((id) => isCut(fields, id));
  const plan = freshRecord<Plan>({ ...fields, cutDone, chosen: true }, Date.now());
  await writeFrom(['plan'], async (stored) => [
    { kind: 'plan', put: plan },
    ...(await choice(stored, piece.id, plan.id)),
  ]).catch(shownByShell);
}

export const choosePlan = ({ pieceId, id }: Plan): Promise<unknown> =>
  writeFrom(['plan'], (stored) => choice(stored, pieceId, id)).catch(shownByShell);

export const removePlan = ({ id }: Plan): Promise<void> => undoable(plans.remove(id), 'Plan deleted.');

/** Ticks a board as cut, in the plan and in the rack, or takes the tick back. */
export function tickCut({ id, pieceId }: Plan, boardId: string, cut: boolean): Promise<unknown> {
  return writeFrom(['plan', 'board'], async (stored) => {
    const [plan, board] = await Promise.all([stored.get('plan', id), stored.get('board', boardId)]);
    const others = (plan?.cutDone ?? []).filter((one) => one !== boardId);
    const changes: Change[] = [];
    if (plan) changes.push({ kind: 'plan', put: { ...plan, cutDone: [...others, ...(cut ? [boardId] : [])] } as Plan });
    if (board) changes.push({ kind: 'board', put: { ...board, state: cut ? 'cut' : 'setAside', pieceId } as Board });
    return changes;
  }).catch(shownByShell);
}

/** Keeps boards of the rack for this piece, so that no other plan takes them. */
export function setAside(free: readonly Board[], piece: Piece): Promise<void> {
  const ids = free.map(({ id }) => id);
  return undoable(
    boards.changeMany(ids, (board) => ({ ...board, state: 'setAside', pieceId: piece.id })),
    `${howMany(free.length, 'board')} set aside.`,
    // One that is cut by then stays so.
    () => boards.changeMany(ids, (now) => (now.state === 'setAside' ? inRack(now) : now)),
  );
}
