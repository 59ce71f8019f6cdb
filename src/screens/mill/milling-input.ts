import type { BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import type { MillingBoard, MillingInput, MillingPart, MillingShop } from '../../core/milling/milling-input.ts';
import { ownLimits } from '../../core/milling/own-limits.ts';
import type { Board } from '../../store/records/board.ts';
import { foldOf } from '../../store/records/part-fold.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import { type Shop, usualMitreWidth } from '../../store/records/shop.ts';
import { machineLimits, millingPractice } from '../../tables/machine-limits.ts';
import { planShop } from '../breakdown/problem-from-records.ts';

/** The machines of the shop as the milling sequence needs them. */
export function millingShop(shop: Shop): MillingShop {
  const { jointer, planer, tableSaw, guidedSaw, mitreSaw, router, handPlanes } = shop.machines;
  return {
    ...planShop(shop),
    jointerWidth: jointer.owned ? jointer.width : null,
    planerWidth: planer.owned ? planer.width : null,
    planerSled: planer.owned && planer.sled,
    tableSaw: tableSaw.owned,
    guidedSaw: guidedSaw.owned,
    mitreWidth: mitreSaw.owned ? (mitreSaw.width ?? usualMitreWidth) : null,
    router: router.owned,
    handPlanes: handPlanes.owned,
  };
}

/** What the sequence is made from: the plan as it was solved, the boards' marks and warp, the machines owned. */
export function millingInput(plan: Plan, piece: Piece, boards: readonly Board[], shop: Shop): MillingInput {
  const solved = plan.problem as unknown as BreakdownProblem;
  const listed = new Map(piece.parts.map((part) => [part.id, part]));
  const stored = new Map(boards.map((board) => [board.id, board]));
  return {
    blanks: plan.blanks,
    boards: solved.boards.map(({ species: _, ...board }): MillingBoard => {
      const found = stored.get(board.id);
      // Cup and bow stay as they were planned with: measured or assumed.
      return { ...found?.warp, ...board, ...(found && { mark: found.chalk }) };
    }),
    parts: solved.parts.map(({ species: _, ...part }): MillingPart => {
      const own = listed.get(part.id);
      const folds = own && foldOf(own)?.sections;
      return { ...part, ...(own && { name: own.name }), ...(folds && { folds }) };
    }),
    shop: millingShop(shop),
    limits: ownLimits(machineLimits, shop.manualLimits ?? {}),
    practice: millingPractice,
  };
}
