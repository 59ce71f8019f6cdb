import type { MillingBoard, MillingInput } from './milling-input.ts';
import { reachableThickness } from './reachable-thickness.ts';

/** The thickness that a piece of this board reaches in this shop. Lengths in mm. */
export const reachedIn = (board: MillingBoard, width: number, length: number, { shop }: MillingInput): number =>
  reachableThickness(board, width, length, shop.faceAllowance);
