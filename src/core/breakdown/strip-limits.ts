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
 * A circular arc's depth falls with the square of its chord and a wind with the width, so the strip may be as wide as
 * the thickness left over after the bow, the faces and the part allows, and no wider than the machines take.
 *
 * @param shop machine widths and allowances, mm
 * @param board rough thickness, width, length, cup, bow and twist, mm
 * @param part its thickness, mm, and whether it is a panel
 * @param blankLength mm
 * @returns width in mm, 0 when no strip reaches the thickness
 * @valid even, shallow curves, as `warpCost`
 * @example widestStrip(
 *   { ...smallProblem.shop, faceAllowance: 1.5 },
 *   { thickness: 27, width: 200, length: 2400, cup: 4, bow: 0 },
 *   { thickness: 23, panel: true },
 *   1000,
 * ) // => 100
 * @source geometry (sagitta of a shallow arc; a wind as in `warpCost`)
 */
export function widestStrip(shop: Shop, board: RoughBoard, part: Part, blankLength: number): number {
  const machines = part.panel ? Math.min(shop.maxStrip, flatteningLimit(shop)) : flatteningLimit(shop);
  const spare = reachableThickness(board, 0, blankLength, shop.faceAllowance) - part.thickness;
  if (spare < 0) return 0;
  const { cup, twist = 0, width, length } = board;
  // By the share u of the board's width: cup u² + wind u is what may be lost.
  const wind = (twist / 2) * (blankLength / length);
  const share =
    wind > 0 ? (2 * spare) / (wind + Math.sqrt(wind ** 2 + 4 * cup * spare)) : cup > 0 ? Math.sqrt(spare / cup) : 1;
  return Math.min(machines, width, width * share);
}
