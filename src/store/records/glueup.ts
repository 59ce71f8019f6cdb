import type { AdhesiveLabel } from '../../core/gluing/adhesive-times.ts';
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
  /** What the label says, as typed in. */
  readonly label?: AdhesiveLabel;
  /** Clamps that it holds until it is unclamped. */
  readonly clamps?: number;
  /** Open, closed, clamp, rest and cure times, in order; one that has begun says when. */
  readonly phases: readonly { readonly name: string; readonly seconds: number; readonly startedAt?: number }[];
  readonly unclampedAt?: number;
  /** Fit for the plane, as the maker or the clock has said. */
  readonly restedAt?: number;
  readonly log?: readonly { readonly at: number; readonly text: string }[];
}
