/** A moisture reading: when, in milliseconds since 1970, and what, in percent. */
export interface MoistureReading {
  readonly at: number;
  readonly percent: number;
}

/** Nearer to equilibrium than this (percent), a meter's scatter hides the approach. */
const scatter = 0.3;

/**
 * How fast wood approaches the moisture of the air around it: the least-squares line through the logarithm of what is
 * still to go, over time, that is `moisture = equilibrium + (start - equilibrium) e^(-t / timeConstant)`.
 *
 * @param readings in order of time; at milliseconds, percent
 * @param equilibrium percent moisture it approaches
 * @returns the time constant in milliseconds; undefined when fewer than two readings are clear of the equilibrium on
 *   the side of the last one, or they don't approach it
 * @valid steady air, and wood past its first free drying: a whole board dries the slower the nearer it comes, which one
 *   exponential follows only roughly
 * @example dryingTimeConstant([{ at: 0, percent: 16 }, { at: 10 * 864e5, percent: 12 }], 8) / 864e5 // => 14.4
 * @source first-order approach, an assumption of this app
 */
export function dryingTimeConstant(readings: readonly MoistureReading[], equilibrium: number): number | undefined {
  const last = readings.at(-1);
  if (!last) return undefined;
  const side = Math.sign(last.percent - equilibrium);
  const usable = readings.filter((one) => (one.percent - equilibrium) * side > scatter);
  if (usable.length < 2) return undefined;
  const points = usable.map((one) => ({ x: one.at - last.at, y: Math.log(Math.abs(one.percent - equilibrium)) }));
  const meanX = points.reduce((sum, { x }) => sum + x, 0) / points.length;
  const meanY = points.reduce((sum, { y }) => sum + y, 0) / points.length;
  const spread = points.reduce((sum, { x }) => sum + (x - meanX) ** 2, 0);
  const slope = points.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0) / spread;
  return slope < 0 ? -1 / slope : undefined;
}
