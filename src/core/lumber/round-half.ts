/** Where the next exact half goes. */
export type HalfGoes = 'up' | 'down';

/** Far below what any tape shows, far above the noise of binary numbers. */
const exactly = 1e-6;

/**
 * Rounds to the nearest whole number, exact halves alternately up and down.
 *
 * @param value 0 or more
 * @param halfGoes where an exact half goes
 * @returns the whole number, and where the next half goes
 * @valid figures of a tally: a half is exact to 1e-9
 * @example roundHalf(6.5, 'up') // => { whole: 7, halfGoes: 'down' }
 * @source NHLA, from memory
 */
export function roundHalf(value: number, halfGoes: HalfGoes): { readonly whole: number; readonly halfGoes: HalfGoes } {
  const below = Math.floor(value);
  if (Math.abs(value - below - 0.5) > exactly) return { whole: Math.round(value), halfGoes };
  return halfGoes === 'up' ? { whole: below + 1, halfGoes: 'down' } : { whole: below, halfGoes: 'up' };
}
