import type { Lap } from '../../core/gluing/pace.ts';

/** Instants of the stopwatch, ms since the epoch: the start, then the end of each lap. */
export type Laps = readonly number[];

/** The laps in their order, with what the maker says at the end of each. */
export const lapEnds: Readonly<Record<Lap, string>> = {
  spread: 'All spread',
  close: 'Seams closed',
  clamp: 'Clamps set',
};

export const lapOrder = Object.keys(lapEnds) as readonly Lap[];

/** The lap that runs; undefined once all are taken. */
export const nextLap = (laps: Laps): Lap | undefined => lapOrder[laps.length - 1];
