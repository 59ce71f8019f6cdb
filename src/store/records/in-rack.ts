import type { Board } from './board.ts';

/** The board as it lies in the rack, for no piece. */
export const inRack = ({ pieceId: _, ...board }: Board): Board => ({ ...board, state: 'rack' });
