import { clampsAt, holdingAt } from './clamps-at.ts';
import type { StageTimes } from './day-plan.ts';

/** A moment with the clamps that are spoken for. */
export interface Busiest {
  /** ms since the epoch */
  readonly from: number;
  readonly clamps: number;
  readonly stages: readonly string[];
}

/**
 * When most clamps are spoken for: with more than there are, some are double-booked.
 *
 * @param times of the stages, ms since the epoch, each with its clamps
 * @returns the first such moment, ms since the epoch, with the clamps and the names of the stages that hold them;
 *   undefined without stages
 * @valid any times
 * @example busiest([6, 5].map((clamps) => ({ id: 'a', name: 'a', from: 0, clampedAt: 0, unclampAt: 60, readyAt: 60, clamps })))
 *   // => { from: 0, clamps: 11, stages: ['a', 'a'] }
 * @source counting
 */
export function busiest(times: readonly StageTimes[]): Busiest | undefined {
  // Clamps only become more when a stage begins.
  const begins = times.map(({ from }) => ({
    from,
    clamps: clampsAt(times, from),
    stages: holdingAt(times, from).map(({ name }) => name),
  }));
  return begins.toSorted((a, b) => b.clamps - a.clamps)[0];
}
