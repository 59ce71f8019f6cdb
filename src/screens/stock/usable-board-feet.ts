import { isProblem } from '../../core/answer/problem.ts';
import { m3PerBoardFoot } from '../../core/answer/us-units.ts';
import { cubicMetresOf } from '../../core/lumber/exact-volume.ts';
import type { Board } from '../../store/records/board.ts';
import { clearStretchesOf } from '../../store/records/board-shape.ts';
import { units } from '../../ui/units.ts';

/** Shorter clear pieces are not counted as usable, mm: a round figure near what jointer and planer carry safely (common practice). */
export const leastUsableLength = (): number => (units.value.unit === 'in' ? 304.8 : 300);

/** Exact board feet in a board's clear stretches. */
export function usableBoardFeet(board: Board, leastWidth: number): number {
  const stretches = clearStretchesOf(board, { leastLength: leastUsableLength(), leastWidth, favour: 'area' });
  if (isProblem(stretches)) return 0;
  const { thickness } = board;
  return stretches.reduce((sum, clear) => sum + cubicMetresOf({ ...clear, thickness }), 0) / m3PerBoardFoot;
}
