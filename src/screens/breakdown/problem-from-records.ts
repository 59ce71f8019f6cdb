import type { BreakdownProblem, Part, Shop as PlanShop, RoughBoard } from '../../core/breakdown/problem-types.ts';
import { narrowestWidth } from '../../core/lumber/board-width.ts';
import { roughThickness } from '../../core/lumber/quarters.ts';
import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Machines, Shop } from '../../store/records/shop.ts';
import { assumedWarp } from '../../tables/assumed-warp.ts';

/** Boards that a plan for this piece may use: what lies in the rack, and what is set aside for it. */
export const usableFor = (piece: Piece, boards: readonly Board[]): Board[] =>
  boards.filter(({ state, pieceId }) => state === 'rack' || (state === 'setAside' && pieceId === piece.id));

/** A board as the plan sees it; warp that nobody has measured is assumed. */
export function roughBoard(board: Board): RoughBoard {
  const width = narrowestWidth(board);
  return {
    id: board.id,
    species: board.species,
    thickness: roughThickness(board.thickness),
    width,
    length: board.length,
    cup: board.warp?.cup ?? width * assumedWarp.cupPerWidth,
    bow: board.warp?.bow ?? board.length * assumedWarp.bowPerLength,
  };
}

/** Wide enough for any board: what a hand plane takes, and a shop without a planer must do by hand. */
const noLimit = 1500;

const kerfOf = (machines: Machines, saws: readonly ('tableSaw' | 'guidedSaw' | 'mitreSaw')[]): number =>
  machines[saws.find((saw) => machines[saw].owned) ?? 'tableSaw'].kerf;

/** The shop's limits as the plan needs them. */
export function planShop({ machines, allowances, strips }: Shop): PlanShop {
  const { jointer, planer } = machines;
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
    ...(jointer.owned ? {} : { flattenBy: planer.owned && planer.sled ? 'planer-sled' : 'hand-plane' }),
  };
}

const planPart = ({ id, species, quantity, length, width, thickness, panel }: Part): Part => ({
  id,
  species,
  quantity,
  length,
  width,
  thickness,
  panel,
});

/** What is asked of the planner for one piece. */
export function problemFromRecords(shop: Shop, boards: readonly Board[], piece: Piece): BreakdownProblem {
  return {
    shop: planShop(shop),
    boards: usableFor(piece, boards).map(roughBoard),
    parts: piece.parts.map(planPart),
  };
}
