import type { Json, StoredRecord } from './record.ts';

export type Cut = 'flat' | 'rift' | 'quarter';

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
  /** How many of its faces, edges and ends get the finish. */
  readonly surfaces?: { readonly faces?: number; readonly edges?: number; readonly ends?: number };
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
