import fc from 'fast-check';
import type { Board } from '../../../src/core/lumber/board.ts';

/** A rough board from inches and feet, as the handbooks give them. */
export function board(quarters: number, inches: number, feet: number): Board {
  return { thickness: { quarters }, width: inches * 25.4, length: feet * 304.8 };
}

const quarters = fc.constantFrom(3, 4, 5, 6, 8, 10, 12, 16);

/** Boards as they come: widths in 1/16 in, lengths in inches, any thickness. */
export const anyBoard: fc.Arbitrary<Board> = fc
  .tuple(quarters, fc.integer({ min: 2 * 16, max: 24 * 16 }), fc.integer({ min: 12, max: 16 * 12 }))
  .map(([thickness, sixteenths, inches]) => board(thickness, sixteenths / 16, inches / 12));
