import type { BreakdownProblem } from './problem-types.ts';

/** What a plan is judged by beside shortage and wood, in mm2 of wood. */
export interface Weights {
  readonly strip: number;
  readonly board: number;
  /** How much more a board's leftover is worth for being long: share of its wood, for a whole board. */
  readonly longLeftovers: number;
  /** How often the wood of a strip counts again when its board is too plain for a part that shows. */
  readonly plain: number;
}

/** Decides between plans that use the same wood, and is far below any difference that can be cut. */
const tieBreak = 1e-6;
/** Wood that the maker gives, when asking for fewer seams, for each strip saved: this share of an average piece. */
const seamShare = 0.04;
/** A whole board kept is worth this share more than its wood in short lengths. */
const longShare = 0.1;
/** So much that a good face is taken wherever there is one; a part is never short for it. */
const plainShare = 10;

/** The weights that follow from the maker's wishes; they scale with the parts' size. */
export function weightsOf({ parts, wishes = {} }: BreakdownProblem): Weights {
  const pieces = parts.reduce((sum, part) => sum + part.quantity, 0);
  const piece = parts.reduce((sum, part) => sum + part.quantity * part.length * part.width, 0) / pieces;
  return {
    strip: piece * (wishes.fewerSeams ? seamShare : tieBreak),
    board: piece * tieBreak * 0.1,
    longLeftovers: wishes.longLeftovers ? longShare : 0,
    plain: wishes.show?.length ? plainShare : 0,
  };
}
