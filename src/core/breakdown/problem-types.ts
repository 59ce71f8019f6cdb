/**
 * What a breakdown is asked and what it answers. Lengths in mm, areas in m2. The plain shapes can be
 * read from and written to JSON as they are; what is optional is absent from a plain problem.
 */

export interface Shop {
  readonly jointerWidth: number;
  readonly planerWidth: number;
  readonly ripKerf: number;
  readonly crosscutKerf: number;
  /** Width that one strip loses to jointing both its edges. */
  readonly edgeAllowance: number;
  /** Added once to every part's length, for snipe and the last trim. */
  readonly lengthAllowance: number;
  /** The least that must come off each face to clean it. */
  readonly faceAllowance: number;
  /** Rough width of a strip that goes into a panel. */
  readonly minStrip: number;
  readonly maxStrip: number;
  /** What flattens a strip wider than the jointer: a sled carries it through the planer, a hand plane takes any width. */
  readonly flattenBy?: 'jointer' | 'planer-sled' | 'hand-plane';
}

/** A rectangle of a board without defects: blanks must lie in one. */
export interface ClearStretch {
  /** From the board's start end. */
  readonly start: number;
  readonly length: number;
  /** From the board's left edge, seen from the start end. */
  readonly offset: number;
  readonly width: number;
}

export interface RoughBoard {
  readonly id: string;
  readonly species: string;
  readonly thickness: number;
  readonly width: number;
  readonly length: number;
  /** Depth of the hollow across the full width. */
  readonly cup: number;
  /** Depth of the curve over the full length. */
  readonly bow: number;
  /** How far one corner lifts while the other three rest on a flat surface. */
  readonly twist?: number;
  /** Where the board is clear; the whole board when absent. Stretches follow each other along the board. */
  readonly clear?: readonly ClearStretch[];
  /** Whether one of its faces is good enough to show. */
  readonly goodFace?: boolean;
}

export interface Part {
  readonly id: string;
  readonly species: string;
  readonly quantity: number;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  /** Edge-glued from strips; otherwise one strip. */
  readonly panel: boolean;
}

export interface Strip {
  readonly width: number;
  readonly part: string;
  /** Counts a part's pieces from 1. */
  readonly unit: number;
}

/** A piece crosscut across the whole board, ripped into strips from its left edge. */
export interface Blank {
  readonly board: string;
  readonly start: number;
  readonly length: number;
  readonly strips: readonly Strip[];
}

/** A strip that is cut already; a spoilt one takes its width and gives nothing. */
export interface CutStrip extends Strip {
  readonly spoilt?: boolean;
}

/** A blank that is cut already, with the strips it was ripped into. */
export interface CutBlank extends Omit<Blank, 'strips'> {
  readonly strips: readonly CutStrip[];
}

/** What the maker wants beyond the least wood. */
export interface Wishes {
  /** Boards to leave in the rack. */
  readonly keepOut?: readonly string[];
  /** The part comes from these boards alone; several wishes for one part add up. */
  readonly fix?: readonly { readonly part: string; readonly board: string }[];
  /** All strips of one panel from one board (1), or from that many boards next to each other in the list. */
  readonly together?: readonly { readonly part: string; readonly boards: number }[];
  /** Parts that come from boards with a good face, as far as those reach. */
  readonly show?: readonly string[];
  /** What is left of a board should be long rather than little. */
  readonly longLeftovers?: boolean;
  /** Fewer, wider strips, at some cost in wood. */
  readonly fewerSeams?: boolean;
}

export interface BreakdownProblem {
  readonly shop: Shop;
  readonly boards: readonly RoughBoard[];
  readonly parts: readonly Part[];
  readonly wishes?: Wishes;
  /** What is cut already: the plan keeps it and goes around it. */
  readonly cut?: readonly CutBlank[];
}

/** A unit that is not covered, and the width that it still lacks. */
export interface Short {
  readonly part: string;
  readonly unit: number;
  readonly missingWidth: number;
}

export interface BreakdownPlan {
  readonly blanks: readonly Blank[];
  readonly short: readonly Short[];
}
