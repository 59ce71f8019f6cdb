import type { Ticks } from '../../core/steps/progress.ts';
import type { Json, StoredRecord } from './record.ts';

/** One run from rough blanks to parts at their thickness, width and length. */
export interface Milling extends StoredRecord {
  readonly pieceId: string;
  readonly planId: string;
  /** The sequence as it was generated. */
  readonly steps: readonly Json[];
  readonly ticks: Ticks;
  /** Measured on the way, by name. */
  readonly measured?: { readonly [name: string]: number };
  readonly finishedAt?: number;
}
