/**
 * Width left once a blank's edges are straight, in mm: a crooked edge is an arc, and its depth falls with the square
 * of the length.
 *
 * - `width`: rough width of the board, mm
 * - `length`: length of the board, mm; `crook`: depth of its edge's curve over that length, mm
 * - `blankLength`: of the blank cut from it, mm
 *
 * Result: mm, 0 when nothing is left. Valid for an even, shallow curve. Errors: none.
 *
 * Example: 200 wide, 12 of crook over 2400, a blank of 1200: 197 mm are straight.
 *
 * Source: plane geometry.
 */
export function straightWidth(width: number, length: number, crook: number, blankLength: number): number {
  return Math.max(0, width - crook * (blankLength / length) ** 2);
}
