import { bestPlan } from '../../../src/core/breakdown/plan-breakdown.ts';
import type { BreakdownPlan, BreakdownProblem } from '../../../src/core/breakdown/problem-types.ts';
import type { Board } from '../../../src/store/records/board.ts';
import type { Part, Piece } from '../../../src/store/records/piece.ts';
import type { Plan } from '../../../src/store/records/plan.ts';
import type { Json } from '../../../src/store/records/record.ts';
import { defaultShop, type Shop } from '../../../src/store/records/shop.ts';

const standard = defaultShop(0);

/** Round figures, so that sums can be done by hand. */
export const shop: Shop = {
  ...standard,
  machines: {
    ...standard.machines,
    jointer: { owned: true, width: 203 },
    planer: { owned: true, width: 330, sled: false },
    tableSaw: { owned: true, kerf: 3.2 },
    mitreSaw: { owned: true, kerf: 3.2 },
  },
  allowances: { edge: 3.2, length: 50, face: 1.2 },
  strips: { min: 50, max: 150 },
};

export const board = (id: string, change: Partial<Board> = {}): Board => ({
  id,
  created: 0,
  updated: 0,
  revision: 1,
  chalk: id.toUpperCase(),
  species: 'cherry-black',
  thickness: { quarters: 4 },
  width: 200,
  length: 2400,
  state: 'rack',
  warp: { cup: 0, bow: 0 },
  ...change,
});

export const part = (id: string, change: Partial<Part> = {}): Part => ({
  id,
  name: id,
  species: 'cherry-black',
  length: 900,
  width: 400,
  thickness: 19,
  quantity: 1,
  panel: true,
  ...change,
});

export const piece = (parts: readonly Part[]): Piece => ({
  id: 'chest',
  created: 0,
  updated: 0,
  revision: 1,
  name: 'Chest',
  parts,
  joints: [],
  stages: [],
});

export const planned = (problem: BreakdownProblem, plan: BreakdownPlan, change: Partial<Plan> = {}): Plan => ({
  id: 'plan',
  created: 0,
  updated: 0,
  revision: 1,
  pieceId: 'chest',
  problem: problem as unknown as Json,
  ...plan,
  ...change,
});

/** The best plan for a problem that is known to be a sound one. */
export const solve = (problem: BreakdownProblem, startFrom?: BreakdownPlan): BreakdownPlan => {
  const found = bestPlan(problem, startFrom ? { startFrom } : {});
  if ('kind' in found) throw new Error(found.message.text);
  return found;
};
