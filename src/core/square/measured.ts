import type { Readings } from './readings.ts';
import { anyShape, leftEndSquare, parallelogram, type ShapeFamily } from './shape-family.ts';

/** What is known of the ends when the diagonals alone can't tell: both lean alike, or the left one is square. */
export type FarEnd = 'parallel' | 'square';

/** What was measured, mm. */
export interface Measured {
  readonly readings: Readings;
  /** How the ends stand, where only the front edge, the left end and the diagonals, or their difference, were taken. */
  readonly farEnd?: FarEnd;
}

/** The kind of shape that fits what was measured. */
export function familyOf({ farEnd }: Measured): ShapeFamily {
  if (farEnd === undefined) return anyShape;
  return farEnd === 'square' ? leftEndSquare : parallelogram;
}
