import { badNumber, type Limits } from '../answer/bad-number.ts';
import type { Problem } from '../answer/problem.ts';
import { problem } from '../answer/problem.ts';
import type { Board, Thickness } from './board.ts';

/** Beyond these a number is a slip of the thumb or of units. Common practice; generous, so that slabs and offcuts fit. */
export const boardLimits = {
  width: { least: 10, most: 1500 },
  length: { least: 50, most: 12_200 },
  thicknessMm: { least: 3, most: 160 },
  quarters: { least: 1, most: 24 },
} as const satisfies Record<string, Limits>;

/**
 * What is wrong with a board's sizes.
 *
 * @param board sizes in mm, thickness in quarters or mm
 * @returns a problem for each field that can't be: not a number, zero or less, or outside of `boardLimits` (10 mm to
 *   1.5 m wide, 50 mm to 12.2 m long, 3 to 160 mm or 1 to 24 quarters thick, in half quarters); none when all is well
 * @valid rough boards: `boardLimits`
 * @example checkBoard({ ...board, length: 27_432 }) // => [{ field: 'length' }]
 * @source the limits are common practice
 */
export function checkBoard(board: Board): Problem[] {
  const { width, farWidth, length } = board;
  return [
    badThickness(board.thickness),
    badNumber('width', 'The width', width, 'mm', boardLimits.width),
    farWidth === undefined
      ? undefined
      : badNumber('farWidth', 'The width at the far end', farWidth, 'mm', boardLimits.width),
    badNumber('length', 'The length', length, 'mm', boardLimits.length),
  ].filter((found) => found !== undefined);
}

function badThickness(thickness: Thickness): Problem | undefined {
  if ('mm' in thickness) return badNumber('thickness', 'The thickness', thickness.mm, 'mm', boardLimits.thicknessMm);
  const bad = badNumber('quarters', 'The thickness in quarters', thickness.quarters, 'count', boardLimits.quarters);
  if (bad) return bad;
  return Number.isInteger(thickness.quarters * 2)
    ? undefined
    : problem('quarters', 'The thickness in quarters must be whole or half, like 4 for 4/4.');
}
