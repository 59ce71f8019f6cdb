import type { StoredRecord } from './record.ts';

/** Nominal rough thickness in quarters of an inch (4/4, 5/4, 8/4), or as measured. */
export type BoardThickness = { readonly quarters: number } | { readonly mm: number };

export type BoardState = 'rack' | 'setAside' | 'cut' | 'used';

/** Depth of each kind of warp. */
export interface Warp {
  readonly cup?: number;
  readonly bow?: number;
  readonly crook?: number;
  readonly twist?: number;
}

/** A tested tool with its own error in mm over its length, as it stood when it was used. */
export interface WarpTool {
  readonly tool: string;
  readonly error: number;
  readonly length: number;
}

export interface WarpTools {
  readonly straightedge?: WarpTool;
  readonly sticks?: WarpTool;
}

export interface MoistureReading {
  readonly at: number;
  readonly percent: number;
  readonly celsius?: number;
}

/** What can't be used: a rectangle from the near end and from the left edge. */
export interface Defect {
  readonly start: number;
  readonly length: number;
  readonly offset: number;
  readonly width: number;
  readonly kind: string;
}

export interface Board extends StoredRecord {
  /** The mark chalked on its end. */
  readonly chalk: string;
  /** Id of a row in `tables/species.ts`, or the name of a wood of the shop's own. */
  readonly species: string;
  readonly thickness: BoardThickness;
  readonly width: number;
  /** Width at the far end, of a board that tapers. */
  readonly farWidth?: number;
  readonly length: number;
  readonly state: BoardState;
  readonly warp?: Warp;
  /** The warp as these tools showed it; `warp` is what it really is. */
  readonly seen?: Warp;
  readonly tools?: WarpTools;
  readonly readings?: readonly MoistureReading[];
  readonly defects?: readonly Defect[];
  readonly deliveryId?: string;
  /** The board that this one was cut from. */
  readonly parentId?: string;
  /** The piece that it is set aside for. */
  readonly pieceId?: string;
  readonly cost?: number;
  /** Whether one of its faces is good enough to show. */
  readonly goodFace?: boolean;
  readonly note?: string;
}
