import { isProblem, type Outcome, within } from '../../core/answer/problem.ts';
import type { BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import type { LimitOverrides } from '../../core/milling/machine-limits.ts';
import type { MillingBoard, MillingInput, MillingPart, MillingShop } from '../../core/milling/milling-input.ts';
import { ownLimits } from '../../core/milling/own-limits.ts';
import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import type { Shop } from '../../store/records/shop.ts';
import { machineLimits, millingPractice } from '../../tables/machine-limits.ts';
import { planShop } from '../breakdown/problem-from-records.ts';

/** Machines with a least size that their manual may name. */
export const limitedMachines = ['jointer', 'planer', 'tableSaw', 'guidedSaw', 'router'] as const;

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

/** The figures of the manuals that the maker typed in. */
export function manualFigures({ manualLimits = {} }: Shop): LimitOverrides {
  const figures = limitedMachines.map((machine) => {
    const { length, width, thickness, depth } = manualLimits[machine] ?? {};
    return [
      machine,
      {
        ...(length !== undefined && { leastLength: length }),
        ...(width !== undefined && { leastWidth: width }),
        ...(thickness !== undefined && { leastThickness: thickness }),
        ...(depth !== undefined && { depthPerPass: depth }),
      },
    ];
  });
  return Object.fromEntries(figures);
}

/** What the sequence is made from: the plan as it was solved, the boards' marks and warp, the machines owned. */
export function millingInput(plan: Plan, piece: Piece, boards: readonly Board[], shop: Shop): Outcome<MillingInput> {
  const limits = ownLimits(machineLimits, manualFigures(shop));
  if (isProblem(limits)) return within(limits, 'limits');
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
    practice: millingPractice,
  };
}
