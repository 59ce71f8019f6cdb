/** A rough board with its warp: all in mm, warp as depths over the full width and length. */
export interface RoughBoard {
  readonly thickness: number;
  readonly width: number;
  readonly length: number;
  /** Depth of the hollow across the full width. */
  readonly cup: number;
  /** Depth of the curve of the face over the full length. */
  readonly bow: number;
  /** How far one corner lifts while the other three rest on a flat surface. */
  readonly twist?: number;
}

/** What each kind of warp costs a piece in thickness once both its faces are flat, in mm. */
export interface WarpCost {
  readonly cup: number;
  readonly bow: number;
  readonly twist: number;
}

/**
 * What warp costs a piece cut from a board, in mm of thickness.
 *
 * - `board`: the board, mm
 * - `width`, `length`: of the piece cut from it, mm
 *
 * Result: mm lost to cup, bow and twist, both faces together.
 * Cup and bow are arcs: an arc's depth falls with the square of its chord. A twisted face is z = k x y: the lift of a
 * corner falls with width times length; turned so that two opposite corners lift equally, half the lift is lost.
 * Valid for even curves that are shallow against their length, in a piece no wider or longer than its board.
 * Errors: none; what can't be is refused by `flatThickness`.
 *
 * Example: 2.5 mm of cup over 250 mm costs a strip of 125 mm 0.625 mm.
 *
 * Source: plane geometry.
 */
export function warpCost(board: RoughBoard, width: number, length: number): WarpCost {
  const across = width / board.width;
  const along = length / board.length;
  return {
    cup: board.cup * across ** 2,
    bow: board.bow * along ** 2,
    twist: ((board.twist ?? 0) / 2) * across * along,
  };
}

/**
 * Thickness left once a piece cut from a rough board is flat on both faces, in mm.
 *
 * - `board`: the board, mm
 * - `width`, `length`: of the piece, mm
 * - `faceAllowance`: the least that comes off each face to clean it, mm
 *
 * Result: mm; 0 when nothing is left. Valid as `warpCost`. Errors: none.
 *
 * Example: 28 mm, cup 2.5 over 250, bow 6 over 2400, cleaned by 1 mm a face: 24.33 mm left in a strip of 125 by 1000.
 *
 * Source: plane geometry.
 */
export function reachableThickness(board: RoughBoard, width: number, length: number, faceAllowance: number): number {
  const { cup, bow, twist } = warpCost(board, width, length);
  return Math.max(0, board.thickness - cup - bow - twist - 2 * faceAllowance);
}
