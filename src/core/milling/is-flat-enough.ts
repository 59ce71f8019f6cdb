import type { MillingBoard } from './milling-input.ts';
import type { MillingPractice } from './milling-practice.ts';
import { warpCost } from './reachable-thickness.ts';

/** Whether a piece of this board came planed and with so little warp that its faces are left alone. Lengths in mm. */
export function isFlatEnough(board: MillingBoard, width: number, length: number, practice: MillingPractice): boolean {
  if (!board.surfaced) return false;
  const { cup, bow, twist } = warpCost(board, width, length);
  return cup + bow + twist <= practice.flatEnoughMm.value;
}
