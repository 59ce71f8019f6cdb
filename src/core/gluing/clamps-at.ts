import { sumOf } from '../answer/sum-of.ts';
import type { StageTimes } from './day-plan.ts';

/** What the count of clamps looks at. */
type Holding = Pick<StageTimes, 'from' | 'unclampAt' | 'clamps'>;

/**
 * The stages that hold clamps at a moment.
 *
 * @param times of the stages, ms since the epoch, each with its clamps
 * @param at ms since the epoch
 * @returns those of them
 * @valid any times
 * @example holdingAt([{ from: 0, unclampAt: 60, clamps: 4 }], 60) // => []
 * @source counting
 */
export const holdingAt = <T extends Holding>(times: readonly T[], at: number): T[] =>
  times.filter(({ from, unclampAt, clamps }) => clamps > 0 && from <= at && at < unclampAt);

/**
 * How many clamps are in use at a moment.
 *
 * @param times of the stages, ms since the epoch, each with its clamps
 * @param at ms since the epoch
 * @returns a count
 * @valid any times
 * @example clampsAt([{ from: 0, unclampAt: 60, clamps: 4 }, { from: 30, unclampAt: 90, clamps: 2 }], 30) // => 6
 * @source counting
 */
export const clampsAt = (times: readonly Holding[], at: number): number =>
  sumOf(holdingAt(times, at), ({ clamps }) => clamps);
