import type { Board } from './board.ts';

/** One board as it goes out to and comes in from a rack list. */
export interface RackRow extends Board {
  /** Empty when it has none yet. */
  readonly chalkMark: string;
  readonly species: string;
  /** Percent. */
  readonly moisture?: number;
  /** In the rack, set aside, cut: in the words of whoever wrote it. */
  readonly state: string;
  readonly note: string;
}
