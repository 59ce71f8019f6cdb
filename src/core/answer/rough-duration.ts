const minute = 60;
const hour = 3600;

/** From how long on a duration is known to what step, seconds. */
const steps = [
  [60 * hour, 12 * hour],
  [10 * hour, hour],
  [hour, 10 * minute],
  [10 * minute, minute],
  [minute, 10],
] as const;

/**
 * Rounds a duration that is known to about two figures, such as how long a glue takes to set in today's air, to a round
 * time.
 *
 * @param seconds duration in seconds, from 0
 * @returns seconds: to 10 s from 1 min, to 1 min from 10 min, to 10 min from 1 h, to 1 h from 10 h, to half days from
 *   60 h
 * @valid 0 and above
 * @example [287, 1722, 41_340].map(roughDuration) // => [290, 1740, 39_600]
 * @source two significant figures, on the marks of a clock
 */
export function roughDuration(seconds: number): number {
  const step = steps.find(([from]) => seconds >= from)?.[1] ?? 1;
  return Math.round(seconds / step) * step;
}
