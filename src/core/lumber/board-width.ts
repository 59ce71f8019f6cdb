import type { Board } from './board.ts';

/**
 * What a plan can count on: the narrow end of a tapered board, mm.
 *
 * @param board widths of both ends, mm
 * @returns mm
 * @valid even tapers
 * @example narrowestWidth({ thickness: { quarters: 4 }, width: 180, farWidth: 150, length: 2400 }) // => 150
 * @source geometry
 */
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
 * @param board widths of both ends, mm
 * @returns mm
 * @valid even tapers
 * @example tallyWidth({ thickness: { quarters: 4 }, width: 180, farWidth: 240, length: 2400 }) // => 200
 * @source NHLA rules for tapering lumber, from memory
 */
export function tallyWidth({ width, farWidth = width }: Board): number {
  return Math.min(width, farWidth) + Math.abs(width - farWidth) / 3;
}
