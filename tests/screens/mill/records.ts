import { isProblem, type Outcome } from '../../../src/core/answer/problem.ts';
import type { MillingInput } from '../../../src/core/milling/milling-input.ts';
import { millingSequence } from '../../../src/core/milling/milling-sequence.ts';
import type { MillingStep } from '../../../src/core/milling/milling-step.ts';
import { problemFromRecords } from '../../../src/screens/breakdown/problem-from-records.ts';
import { millingInput } from '../../../src/screens/mill/milling-input.ts';
import type { Board } from '../../../src/store/records/board.ts';
import type { Milling } from '../../../src/store/records/milling.ts';
import type { Piece } from '../../../src/store/records/piece.ts';
import type { Plan, PlanBlank } from '../../../src/store/records/plan.ts';
import type { Json } from '../../../src/store/records/record.ts';
import { defaultShop } from '../../../src/store/records/shop.ts';

export const now = 1_700_000_000_000;
const stamps = (id: string) => ({ id, created: now, updated: now, revision: 1 });

export const board = (id: string, given: Partial<Board> = {}): Board => ({
  ...stamps(id),
  chalk: id.toUpperCase(),
  species: 'cherry-black',
  thickness: { quarters: 5 },
  width: 180,
  length: 2400,
  state: 'rack',
  ...given,
});

export const shop = defaultShop(now);

export const piece: Piece = {
  ...stamps('chest'),
  name: 'Chest',
  parts: [
    {
      id: 'p1',
      name: 'Rail',
      species: 'cherry-black',
      length: 900,
      width: 60,
      thickness: 20,
      quantity: 4,
      panel: false,
    },
    {
      id: 'p2',
      name: 'Lid',
      species: 'cherry-black',
      length: 800,
      width: 300,
      thickness: 20,
      quantity: 1,
      panel: true,
    },
  ],
  joints: [],
  stages: [],
};

export const rack = [board('a1'), board('a2', { warp: { twist: 3, crook: 4 } }), board('a3')];

/** Four rails out of board a1, a lid out of two lengths of a2. */
export const blanks: readonly PlanBlank[] = [
  {
    board: 'a1',
    start: 0,
    length: 950,
    strips: [
      { width: 64, part: 'p1', unit: 1 },
      { width: 64, part: 'p1', unit: 2 },
    ],
  },
  {
    board: 'a1',
    start: 953.2,
    length: 950,
    strips: [
      { width: 64, part: 'p1', unit: 3 },
      { width: 64, part: 'p1', unit: 4 },
    ],
  },
  { board: 'a2', start: 0, length: 850, strips: [{ width: 160, part: 'p2', unit: 1 }] },
  { board: 'a2', start: 853.2, length: 850, strips: [{ width: 160, part: 'p2', unit: 1 }] },
];

export const plan = (id: string, cut: readonly PlanBlank[] = blanks): Plan => ({
  ...stamps(id),
  pieceId: piece.id,
  problem: problemFromRecords(shop, rack, piece) as unknown as Json,
  blanks: cut,
  short: [],
  chosen: true,
});

export function sure<T>(outcome: Outcome<T>): T {
  if (isProblem(outcome)) throw new Error(`${outcome.field}: ${outcome.message.text}`);
  return outcome;
}

/** What a run of this plan is made from, and its steps. */
export function sequence(of: Plan): { input: MillingInput; steps: MillingStep[] } {
  const input = millingInput(of, piece, rack, shop);
  return { input, steps: sure(millingSequence(input)) };
}

export function run(of: Plan, given: Partial<Milling> = {}): Milling {
  const { input, steps } = sequence(of);
  return {
    ...stamps('run'),
    pieceId: piece.id,
    planId: of.id,
    input: input as unknown as Json,
    steps: steps as unknown as readonly Json[],
    ticks: {},
    ...given,
  };
}
