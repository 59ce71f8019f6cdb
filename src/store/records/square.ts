import type { StoredRecord } from './record.ts';

export interface SquareReadings {
  readonly front?: number;
  readonly right?: number;
  readonly back?: number;
  readonly left?: number;
  readonly diagonalAC?: number;
  readonly diagonalBD?: number;
  /** AC longer than BD by this much, compared with a stick. */
  readonly difference?: number;
}

/** One check of a case, frame or panel for square. */
export interface Square extends StoredRecord {
  readonly pieceId?: string;
  readonly readings: SquareReadings;
  /** What the maker knows of the ends, where one length, one width and the diagonals alone can't tell. */
  readonly farEnd?: 'parallel' | 'square';
  /** Reading error of one measurement. */
  readonly precision: number;
  /** What is checked, for example `case before glue`. */
  readonly use: string;
  readonly at: number;
}
