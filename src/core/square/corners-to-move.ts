import type { Squareness } from './squareness.ts';

/**
 * Which back corners of a piece out of square must slide along the back edge.
 *
 * @param found what is known of the piece
 * @returns the corners that stand further out than the readings can show; none when both ends are square and it is the
 *   back edge that runs off
 * @valid readings that agree, of a piece that is not square
 * @example cornersToMove({ slide: { C: -4, D: 0.1 }, detectable: 0.5, fitted: corners([900, 0], [904, 600], [0, 600]) }) // => ['C']
 * @source common practice
 */
export function cornersToMove({
  slide,
  detectable,
  fitted,
}: Pick<Squareness, 'slide' | 'detectable' | 'fitted'>): ('C' | 'D')[] {
  const by = { C: Math.abs(slide.C ?? 0), D: Math.abs(slide.D ?? 0) };
  const largest = Math.max(by.C, by.D);
  if (largest <= (detectable ?? 0) && Math.abs(fitted.C.y - fitted.D.y) > largest) return [];
  return (['C', 'D'] as const).filter((corner) => by[corner] > Math.min(detectable ?? 0, largest / 2));
}
