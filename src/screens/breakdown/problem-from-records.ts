import type { BreakdownProblem, Part, Shop as PlanShop, Wishes } from '../../core/breakdown/problem-types.ts';
import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Machines, Shop } from '../../store/records/shop.ts';
import { inLoggedOrder } from '../stock/board-order.ts';
import { needOf, roughBoard } from './rough-board.ts';

/** Boards that a plan for this piece may use, as they were logged: what lies in the rack, and what is set aside for it. */
export const usableFor = (piece: Piece, boards: readonly Board[]): Board[] =>
  inLoggedOrder(boards).filter(
    ({ state, pieceId }) => state === 'rack' || (state === 'setAside' && pieceId === piece.id),
  );

/** Wide enough for any board: what a hand plane takes, and a shop without a planer must do by hand. */
const noLimit = 1500;

const kerfOf = (machines: Machines, saws: readonly ('tableSaw' | 'guidedSaw' | 'mitreSaw')[]): number =>
  machines[saws.find((saw) => machines[saw].owned) ?? 'tableSaw'].kerf;

/** What flattens a strip that is wider than the jointer, where something does. */
function widerThanJointer({ jointer, planer, handPlanes }: Machines): PlanShop['flattenBy'] {
  const sled = planer.owned && planer.sled;
  if ((handPlanes.owned && handPlanes.wide) || !(jointer.owned || sled)) return 'hand-plane';
  return sled ? 'planer-sled' : undefined;
}

/** The shop's limits as the plan needs them. */
export function planShop({ machines, allowances, strips }: Shop): PlanShop {
  const { jointer, planer } = machines;
  const by = widerThanJointer(machines);
  return {
    jointerWidth: jointer.owned ? jointer.width : noLimit,
    planerWidth: planer.owned ? planer.width : noLimit,
    ripKerf: kerfOf(machines, ['tableSaw', 'guidedSaw']),
    crosscutKerf: kerfOf(machines, ['mitreSaw', 'guidedSaw', 'tableSaw']),
    edgeAllowance: allowances.edge,
    lengthAllowance: allowances.length,
    faceAllowance: allowances.face,
    minStrip: strips.min,
    maxStrip: strips.max,
    ...(by && { flattenBy: by }),
  };
}

/** What the planner needs to know of a part, beside which it is. */
export const asked = ['species', 'quantity', 'length', 'width', 'thickness', 'panel'] as const;

const planPart = (part: Part): Part =>
  Object.fromEntries((['id', ...asked] as const).map((property) => [property, part[property]])) as unknown as Part;

/** What is asked of the planner for one piece; wishes about boards and parts that are gone are left out. */
export function problemFromRecords(
  shop: Shop,
  boards: readonly Board[],
  piece: Piece,
  wishes: Wishes = {},
): BreakdownProblem {
  const limits = planShop(shop);
  const parts = piece.parts.map(planPart);
  const need = needOf(limits, parts, wishes);
  const usable = usableFor(piece, boards).map((board) => roughBoard(board, need));
  return { shop: limits, boards: usable, parts, wishes: standingWishes(wishes, usable, parts) };
}

function standingWishes(wishes: Wishes, boards: BreakdownProblem['boards'], parts: readonly Part[]): Wishes {
  const hasBoard = (id: string) => boards.some((board) => board.id === id);
  const hasPart = (id: string) => parts.some((part) => part.id === id);
  const { keepOut = [], fix = [], together = [], show = [], ...rest } = wishes;
  return {
    ...rest,
    keepOut: keepOut.filter(hasBoard),
    fix: fix.filter(({ part, board }) => hasPart(part) && hasBoard(board)),
    together: together.filter(({ part }) => parts.some(({ id, panel }) => id === part && panel)),
    show: show.filter(hasPart),
  };
}
