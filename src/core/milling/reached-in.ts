import type { MillingBoard, MillingInput } from './milling-input.ts';
import type { MillingPractice } from './milling-practice.ts';
import { reachableThickness, warpCost } from './reachable-thickness.ts';

/** Whether a piece of this board came planed and with so little warp that its faces are left alone. Lengths in mm. */
export function isFlatEnough(board: MillingBoard, width: number, length: number, practice: MillingPractice): boolean {
  if (!board.surfaced) return false;
  const { cup, bow, twist } = warpCost(board, width, length);
  return cup + bow + twist <= practice.flatEnoughMm.value;
}

/** What cleaning takes off each face at least, in mm: nothing of a board that came planed. */
export const faceAllowanceOf = ({ surfaced }: MillingBoard, { shop }: MillingInput): number =>
  surfaced ? 0 : shop.faceAllowance;

/** The thickness that a piece of this board reaches in this shop; its own where it is flat enough. Lengths in mm. */
export const reachedIn = (board: MillingBoard, width: number, length: number, input: MillingInput): number =>
  isFlatEnough(board, width, length, input.practice)
    ? board.thickness
    : reachableThickness(board, width, length, faceAllowanceOf(board, input));
