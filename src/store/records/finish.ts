import type { Ticks } from '../../core/steps/progress.ts';
import type { Json, StoredRecord } from './record.ts';

/** The schedule of one finish on one piece. */
export interface Finish extends StoredRecord {
  readonly pieceId: string;
  /** Id of a row in `tables/finishes.ts`. */
  readonly kind: string;
  /** Figures typed in from the can. */
  readonly label?: { readonly [name: string]: number };
  readonly coats: number;
  /** Square metres. */
  readonly area: number;
  readonly containers: readonly { readonly litres: number; readonly price: number; readonly count?: number }[];
  readonly steps: readonly Json[];
  readonly ticks: Ticks;
  readonly finishedAt?: number;
}
