import { clampsAt, holdingAt } from './clamps-at.ts';
import type { StageTimes, Window } from './day-plan.ts';

/** A stretch in which more clamps are spoken for than there are. */
export interface DoubleBooking extends Window {
  readonly clamps: number;
  readonly stages: readonly string[];
}

/**
 * Where clamps are double-booked, for times that the maker has set or moved by hand.
 *
 * @param times of the stages, ms since the epoch, each with its clamps
 * @param clampsOwned how many there are
 * @returns each stretch over that number, ms since the epoch, with the names of the stages in it
 * @valid any times
 * @example doubleBookings(
 *   [6, 5].map((clamps) => ({ id: 'a', name: 'a', from: 0, clampedAt: 0, unclampAt: 60, readyAt: 60, clamps })),
 *   8,
 * ) // => [{ from: 0, until: 60, clamps: 11 }]
 * @source counting
 */
export function doubleBookings(times: readonly StageTimes[], clampsOwned: number): DoubleBooking[] {
  const moments = [...new Set(times.flatMap(({ from, unclampAt }) => [from, unclampAt]))].sort((a, b) => a - b);
  return moments.slice(0, -1).flatMap((from, index) => {
    const clamps = clampsAt(times, from);
    if (clamps <= clampsOwned) return [];
    return [
      { from, until: moments[index + 1] ?? from, clamps, stages: holdingAt(times, from).map(({ name }) => name) },
    ];
  });
}
