import type { BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import type { MachineLimits } from '../../core/milling/machine-limits.ts';
import type { MillingBoard, MillingInput, MillingPart, MillingShop } from '../../core/milling/milling-input.ts';
import type { MillingPractice } from '../../core/milling/milling-practice.ts';
import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import type { Shop } from '../../store/records/shop.ts';
import { planShop } from '../breakdown/problem-from-records.ts';

/** The machines of the shop as the milling sequence needs them. */
export function millingShop(shop: Shop): MillingShop {
  const { jointer, planer, tableSaw, guidedSaw, router, handPlanes } = shop.machines;
  const { ripKerf, crosscutKerf, edgeAllowance, lengthAllowance, faceAllowance } = planShop(shop);
  return {
    ripKerf,
    crosscutKerf,
    edgeAllowance,
    lengthAllowance,
    faceAllowance,
    jointerWidth: jointer.owned ? jointer.width : null,
    planerWidth: planer.owned ? planer.width : null,
    planerSled: planer.owned && planer.sled,
    tableSaw: tableSaw.owned,
    guidedSaw: guidedSaw.owned,
    router: router.owned,
    handPlanes: handPlanes.owned,
  };
}

/** What the sequence is made from: the plan as it was solved, the boards' marks and warp, the machines owned. */
export function millingInput(
  plan: Plan,
  piece: Piece,
  boards: readonly Board[],
  shop: Shop,
  limits: MachineLimits,
  practice: MillingPractice,
): MillingInput {
  const solved = plan.problem as unknown as BreakdownProblem;
  const named = new Map(piece.parts.map(({ id, name }) => [id, name]));
  const stored = new Map(boards.map((board) => [board.id, board]));
  return {
    blanks: plan.blanks,
    boards: solved.boards.map(({ species: _, clear: __, ...board }): MillingBoard => {
      const found = stored.get(board.id);
      return {
        ...board,
        ...(found && { mark: found.chalk }),
        ...(found?.warp?.crook !== undefined && { crook: found.warp.crook }),
        ...(found?.warp?.twist !== undefined && { twist: found.warp.twist }),
      };
    }),
    parts: solved.parts.map(({ species: _, ...part }): MillingPart => {
      const name = named.get(part.id);
      return { ...part, ...(name && { name }) };
    }),
    shop: millingShop(shop),
    limits,
    practice,
  };
}
