import type { StoredRecord } from './record.ts';

/** One stage glued up: what, with what, and how far it is. */
export interface Glueup extends StoredRecord {
  readonly pieceId?: string;
  readonly name: string;
  /** Id of the piece's stage, or a name. */
  readonly stage: string;
  /** Id of a row in `tables/adhesives.ts`. */
  readonly adhesive: string;
  readonly celsius: number;
  readonly seams: readonly { readonly length: number; readonly width: number }[];
  readonly startedAt?: number;
  /** Open, clamp and rest times, in order. */
  readonly phases: readonly { readonly name: string; readonly seconds: number; readonly startedAt?: number }[];
  readonly unclampedAt?: number;
  readonly log?: readonly { readonly at: number; readonly text: string }[];
}
