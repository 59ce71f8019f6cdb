import type { Json, StoredRecord } from './record.ts';

export interface PlanStrip {
  readonly width: number;
  readonly part: string;
  /** Counts a part's pieces from 1. */
  readonly unit: number;
  /** It was cut and turned out bad: it gives nothing. */
  readonly spoilt?: boolean;
}

export interface PlanBlank {
  readonly board: string;
  readonly start: number;
  readonly length: number;
  readonly strips: readonly PlanStrip[];
}

/** How a piece's parts come out of the boards. */
export interface Plan extends StoredRecord {
  readonly pieceId: string;
  /** The breakdown problem as it was solved, so that the plan stays true when stock or shop change. */
  readonly problem: Json;
  readonly blanks: readonly PlanBlank[];
  readonly short: readonly { readonly part: string; readonly unit: number; readonly missingWidth: number }[];
  /** Boards already crosscut. */
  readonly cutDone?: readonly string[];
  readonly chosen?: boolean;
}
