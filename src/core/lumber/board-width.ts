import type { Board } from './board.ts';

/** What a plan can count on: the narrow end of a tapered board, mm. */
export function narrowestWidth({ width, farWidth = width }: Board): number {
  return Math.min(width, farWidth);
}

/** Mean of both ends, for the exact volume of an even taper, mm. */
export function meanWidth({ width, farWidth = width }: Board): number {
  return (width + farWidth) / 2;
}

/**
 * The width that the hardwood rule measures, mm: of a tapered board, one third of the length from the narrow end.
 *
 * Example: 180 mm at one end and 240 mm at the other count as 200 mm.
 *
 * Source: NHLA rules for tapering lumber, from memory.
 */
export function tallyWidth({ width, farWidth = width }: Board): number {
  return Math.min(width, farWidth) + Math.abs(width - farWidth) / 3;
}
