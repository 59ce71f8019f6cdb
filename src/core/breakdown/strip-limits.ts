import { reachableThickness } from '../milling/reachable-thickness.ts';
import type { Part, RoughBoard, Shop } from './problem-types.ts';

/** The widest strip in mm that the shop can flatten: the jointer's width unless something else carries it. */
export function flatteningLimit(shop: Shop): number {
  if (shop.flattenBy === 'hand-plane') return Number.MAX_VALUE;
  return shop.flattenBy === 'planer-sled' ? Math.max(shop.jointerWidth, shop.planerWidth) : shop.jointerWidth;
}

/**
 * The widest rough strip that a blank of a board can give for a part.
 *
 * A circular arc's depth falls with the square of its chord, so the strip may be as wide as the
 * thickness left over after the bow, the faces and the part allows, and no wider than the machines take.
 *
 * @param shop machine widths and allowances, mm
 * @param board rough thickness, width, length, cup and bow, mm
 * @param part its thickness, mm, and whether it is a panel
 * @param blankLength mm
 * @returns width in mm, 0 when no strip reaches the thickness
 * @valid cup and bow that are arcs shallow against their chord
 * @example widestStrip(
 *   { ...smallProblem.shop, faceAllowance: 1.5 },
 *   { thickness: 27, width: 200, length: 2400, cup: 4, bow: 0 },
 *   { thickness: 23, panel: true },
 *   1000,
 * ) // => 100
 * @source geometry (sagitta of a shallow arc)
 */
export function widestStrip(shop: Shop, board: RoughBoard, part: Part, blankLength: number): number {
  const machines = part.panel ? Math.min(shop.maxStrip, flatteningLimit(shop)) : flatteningLimit(shop);
  const spare = reachableThickness(board, 0, blankLength, shop.faceAllowance) - part.thickness;
  if (spare < 0) return 0;
  if (board.cup === 0) return Math.min(machines, board.width);
  return Math.min(machines, board.width, board.width * Math.sqrt(spare / board.cup));
}
