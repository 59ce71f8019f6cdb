import type { FoldSection } from '../breakdown/folded-panel.ts';
import type { CutBlank, Part, RoughBoard, Shop } from '../breakdown/problem-types.ts';
import type { MachineLimits } from './machine-limits.ts';
import type { MillingPractice } from './milling-practice.ts';

/** A board as it lies in the stack: the breakdown's board, and what the jointer needs to know besides. Lengths in mm. */
export interface MillingBoard extends Omit<RoughBoard, 'species'> {
  /** What is chalked on its end; the id when there is none. */
  readonly mark?: string;
  /** Depth of the curve of the edge over the full length. */
  readonly crook?: number;
}

/** A part of the piece, at its finished size in mm; length runs along the grain. */
export interface MillingPart extends Omit<Part, 'species'> {
  /** What the maker calls it; the id when there is none. */
  readonly name?: string;
  /** Sections in order along the grain, when the panel is cut later and folds over mitred corners. */
  readonly folds?: readonly FoldSection[];
}

/** The machines owned, and what this maker allows for. Widths in mm; no machine is null. */
export interface MillingShop
  extends Pick<Shop, 'ripKerf' | 'crosscutKerf' | 'edgeAllowance' | 'lengthAllowance' | 'faceAllowance'> {
  readonly jointerWidth: number | null;
  readonly planerWidth: number | null;
  /** A flat carrier for the planer, on which a blank is shimmed so that it can't rock. */
  readonly planerSled: boolean;
  readonly tableSaw: boolean;
  readonly guidedSaw: boolean;
  /** The widest board that the mitre saw crosscuts; a run from before it was asked for has none. */
  readonly mitreWidth?: number | null;
  readonly router: boolean;
  readonly handPlanes: boolean;
}

/** All that the milling sequence is made from. */
export interface MillingInput {
  /** A spoilt strip keeps its place in its blank and is milled no further. */
  readonly blanks: readonly CutBlank[];
  readonly boards: readonly MillingBoard[];
  readonly parts: readonly MillingPart[];
  readonly shop: MillingShop;
  readonly limits: MachineLimits;
  readonly practice: MillingPractice;
}
