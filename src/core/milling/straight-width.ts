/**
 * Width left once a blank's edges are straight, in mm: a crooked edge is an arc, and its depth falls with the square
 * of the length.
 *
 * @param width rough width of the board, mm
 * @param length of the board, mm
 * @param crook depth of its edge's curve over that length, mm
 * @param blankLength of the blank cut from it, mm
 * @returns mm, 0 when nothing is left
 * @valid an even, shallow curve
 * @example straightWidth(200, 2400, 12, 1200) // => 197
 * @source plane geometry
 */
export function straightWidth(width: number, length: number, crook: number, blankLength: number): number {
  return Math.max(0, width - crook * (blankLength / length) ** 2);
}
