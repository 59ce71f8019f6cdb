import type { Json, StoredRecord } from './record.ts';

export type Cut = 'flat' | 'rift' | 'quarter';

/** What one side of a part gets: the finish of what is seen, that of the inside, or none. */
export type Side = 'shown' | 'inside' | 'bare';
export type Sides = readonly [Side, Side];

export interface Part {
  readonly id: string;
  readonly name: string;
  /** Id of a row in `tables/species.ts`. */
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

export interface Joint {
  readonly id: string;
  readonly kind: string;
  /** Ids of the parts that meet. */
  readonly parts: readonly string[];
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
  readonly finishedAt?: number;
  readonly note?: string;
}
