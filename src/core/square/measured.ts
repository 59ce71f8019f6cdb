import { type Observation, observationsOf } from './observation.ts';
import type { Readings } from './readings.ts';
import { anyShape, leftEndSquare, parallelogram, type ShapeFamily } from './shape-family.ts';

/** What is known of the ends when the diagonals alone can't tell: both lean alike, or the left one is square. */
export type FarEnd = 'parallel' | 'square';

/** The ways to measure a piece, mm. */
export type Measured =
  | { readonly way: 'readings'; readonly readings: Readings }
  | {
      /** The difference of the diagonals with a stick cut to one of them: AC longer than BD by that much. */
      readonly way: 'stick';
      readonly length: number;
      readonly width: number;
      readonly difference: number;
      readonly farEnd: FarEnd;
    }
  | {
      /** One length, one width and the two diagonals. */
      readonly way: 'diagonals';
      readonly length: number;
      readonly width: number;
      readonly diagonalAC: number;
      readonly diagonalBD: number;
      readonly farEnd: FarEnd;
    };

/** What was observed, and the family in which the piece is looked for. */
export interface Question {
  readonly family: ShapeFamily;
  readonly observations: readonly Observation[];
}

/** What a way of measuring comes to: lengths that were read, and the kind of shape that they are fitted with. */
export function questionOf(measured: Measured): Question {
  if (measured.way === 'readings') return { family: anyShape, observations: observationsOf(measured.readings) };
  const size: Observation[] = [
    { of: 'front', value: measured.length },
    { of: 'left', value: measured.width },
  ];
  const diagonals: Observation[] =
    measured.way === 'stick'
      ? [{ of: 'difference', value: measured.difference }]
      : [
          { of: 'diagonalAC', value: measured.diagonalAC },
          { of: 'diagonalBD', value: measured.diagonalBD },
        ];
  return {
    family: measured.farEnd === 'square' ? leftEndSquare : parallelogram,
    observations: [...size, ...diagonals],
  };
}
