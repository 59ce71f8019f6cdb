import type { AttachmentKind } from '../../core/movement/attachment.ts';
import type { MoistureReading } from './board.ts';
import type { Json, StoredRecord } from './record.ts';
import type { Shop } from './shop.ts';

export type Cut = 'flat' | 'rift' | 'quarter';

/** What one side of a part gets: the finish of what is seen, that of the inside, or none. */
export type Side = 'shown' | 'inside' | 'bare';
export type Sides = readonly [Side, Side];

export interface Part {
  readonly id: string;
  readonly name: string;
  /** Id of a row in `tables/species.ts`, or the name of a wood of the shop's own. */
  readonly species: string;
  /** Along the grain. */
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly quantity: number;
  /** Edge-glued from strips; otherwise solid. */
  readonly panel: boolean;
  readonly cut?: Cut;
  /** Which of its two faces, edges and ends get the finish; what is left out is shown. */
  readonly surfaces?: { readonly faces?: Sides; readonly edges?: Sides; readonly ends?: Sides };
  readonly fold?: Json;
}

/** How one of two parts meets the other: with which surface, and how its grain runs at the seam. */
export interface Meeting {
  readonly surface: 'edge' | 'face' | 'end' | 'mitre';
  readonly grain: 'along' | 'across';
}

/** Screws or pegs in one row along a seam that floats. */
export interface Fixing {
  readonly count: number;
  /** From each end of the seam to the first. */
  readonly inset: number;
  readonly shank: number;
  /** Diameter of the head, where it is sunk. */
  readonly head?: number;
  /** Which one keeps still, counted from 0. */
  readonly fixed: number;
  /** Room beyond the movement at each end of a slot. */
  readonly margin: number;
}

/** What holds a top down in place of screws in slots, and how far it sits from the line where the top is fixed. */
export type Attached = AttachmentKind & { readonly distance: number };

export interface Joint {
  readonly id: string;
  readonly kind: string;
  /** Ids of the parts that meet. */
  readonly parts: readonly string[];
  /** How they meet, in the order of `parts`. */
  readonly meets?: readonly [Meeting, Meeting];
  /** Along the seam. */
  readonly length?: number;
  /** Across the seam, where a face lies on another part. */
  readonly breadth?: number;
  readonly fixing?: Fixing;
  readonly attached?: Attached;
  readonly note?: string;
}

/** What is glued up in one go. */
export interface Stage {
  readonly id: string;
  readonly name: string;
  readonly parts: readonly string[];
  readonly doneAt?: number;
}

/** What is being made. */
export interface Piece extends StoredRecord {
  readonly name: string;
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  readonly stages: readonly Stage[];
  /** Where it will live; as the shop has it when this is left out. */
  readonly climate?: Shop['climate'];
  /** What its wood read last. */
  readonly reading?: MoistureReading;
  readonly finishedAt?: number;
}
