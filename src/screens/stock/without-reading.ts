import type { Board, MoistureReading } from '../../store/records/board.ts';

/** A board without one of its readings. */
export const withoutReading = (board: Board, { at, percent }: MoistureReading): Board => ({
  ...board,
  readings: (board.readings ?? []).filter((one) => one.at !== at || one.percent !== percent),
});
