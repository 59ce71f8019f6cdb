import type { Measured } from '../../core/milling/with-measured.ts';
import type { Ticks } from '../../core/steps/progress.ts';
import type { Json, StoredRecord } from './record.ts';

/** One run from rough blanks to parts at their thickness, width and length. */
export interface Milling extends StoredRecord {
  readonly pieceId: string;
  readonly planId: string;
  /** What the sequence was made from, so that a run stays true when stock or shop change. */
  readonly input: Json;
  /** The sequence as it was generated. */
  readonly steps: readonly Json[];
  readonly ticks: Ticks;
  /** Measured on the way, in the order in which it was. */
  readonly measured?: readonly Measured[];
  /** Strips that can't be used in the end, and why. */
  readonly lost?: { readonly [strip: string]: string };
  readonly finishedAt?: number;
}
