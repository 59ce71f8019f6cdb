import type { Lap } from '../../core/gluing/pace.ts';

/** Instants of the stopwatch, ms since the epoch: the start, then the end of each lap. */
export type Laps = readonly number[];

export const lapNames: Readonly<Record<Lap, { readonly doing: string; readonly done: string }>> = {
  spread: { doing: 'Spreading', done: 'All spread' },
  close: { doing: 'Closing the seams', done: 'Seams closed' },
  clamp: { doing: 'Setting the clamps', done: 'Clamps set' },
};

export const lapOrder = Object.keys(lapNames) as readonly Lap[];

/** The lap that runs; undefined once all are taken. */
export const nextLap = (laps: Laps): Lap | undefined => lapOrder[laps.length - 1];
