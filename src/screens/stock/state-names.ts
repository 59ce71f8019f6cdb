import type { BoardState } from '../../store/records/board.ts';

export const stateNames: Record<BoardState, string> = {
  rack: 'In the rack',
  setAside: 'Set aside',
  cut: 'Cut',
  used: 'Used up',
};
