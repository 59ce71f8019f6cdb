import type { WidthOnDay } from '../../core/movement/seasonal-width.ts';

export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Where a day and a width lie in the chart: the year fills its width, the widths from least to most its height. */
export function placeInYear(
  points: readonly WidthOnDay[],
  frame: Frame,
): (point: WidthOnDay) => { x: number; y: number } {
  const widths = points.map(({ width }) => width);
  const least = Math.min(...widths);
  // A part that doesn't move at all is a level line through the middle.
  const span = Math.max(...widths) - least;
  return ({ day, width }) => ({
    x: frame.left + ((frame.right - frame.left) * day) / 365,
    y: frame.bottom - (frame.bottom - frame.top) * (span === 0 ? 0.5 : (width - least) / span),
  });
}

/** Whole days since 1 January where the maker is; while clocks are changed a day begins an hour late or early. */
export const dayOfYear = (at: Date): number =>
  Math.floor((at.getTime() - new Date(at.getFullYear(), 0, 1).getTime()) / 86_400_000);
