import type { DryRun } from '../../core/gluing/pace.ts';

/** Instants of the stopwatch, ms since the epoch: the start, then the end of each lap. */
export type Laps = readonly number[];

const order = ['spread', 'close', 'clamp'] as const;
export type Lap = (typeof order)[number];

export const lapNames: Readonly<Record<Lap, { readonly doing: string; readonly done: string }>> = {
  spread: { doing: 'Spreading', done: 'All spread' },
  close: { doing: 'Closing the seams', done: 'Seams closed' },
  clamp: { doing: 'Setting the clamps', done: 'Clamps set' },
};

/** The lap that runs; undefined once all are taken. */
export const nextLap = (laps: Laps): Lap | undefined => order[laps.length - 1];

/** The run as the pace learns from it. A lap of no time, or one in which nothing was done, tells nothing and is left out. */
export function dryRunOf(laps: Laps, done: Pick<DryRun, 'areaM2' | 'seams' | 'clamps'>): DryRun {
  const lap = (at: number, amount: number) => {
    const taken = ((laps[at + 1] ?? 0) - (laps[at] ?? 0)) / 1000;
    return taken > 0 && amount > 0 ? taken : undefined;
  };
  const spread = lap(0, done.areaM2);
  const close = lap(1, done.seams);
  const clamp = lap(2, done.clamps);
  return {
    ...done,
    ...(spread !== undefined && { spreadSeconds: spread }),
    ...(close !== undefined && { closeSeconds: close }),
    ...(clamp !== undefined && { clampSeconds: clamp }),
  };
}
