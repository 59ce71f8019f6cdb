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
 * @param board the board, mm
 * @param width of the piece cut from it, mm
 * @param length of the piece cut from it, mm
 * @returns mm lost to cup, bow and twist, both faces together. Cup and bow are arcs: an arc's depth falls with the
 *   square of its chord. A twisted face is z = k x y: the lift of a corner falls with width times length; turned so
 *   that two opposite corners lift equally, half the lift is lost
 * @valid even curves that are shallow against their length, in a piece no wider or longer than its board; what
 *   can't be is refused by `flatThickness`
 * @example warpCost({ thickness: 28, width: 250, length: 2400, cup: 2.5, bow: 0 }, 125, 1000)
 *   // => { cup: 0.625, bow: 0, twist: 0 }
 * @source plane geometry
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
 * @param board the board, mm
 * @param width of the piece, mm
 * @param length of the piece, mm
 * @param faceAllowance the least that comes off each face to clean it, mm
 * @returns mm; 0 when nothing is left
 * @valid as `warpCost`
 * @example reachableThickness({ thickness: 28, width: 250, length: 2400, cup: 2.5, bow: 6 }, 125, 1000, 1) // => 24.33
 * @source plane geometry
 */
export function reachableThickness(board: RoughBoard, width: number, length: number, faceAllowance: number): number {
  const { cup, bow, twist } = warpCost(board, width, length);
  return Math.max(0, board.thickness - cup - bow - twist - 2 * faceAllowance);
}
