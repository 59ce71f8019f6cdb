/** Numbers from 0 up to 1 that look random and are the same on every run (mulberry32, a public-domain generator). */
export type Random = () => number;

/** The numbers that follow from a seed, a whole number from 0 to 2^32 - 1. */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A whole number from 0 up to, but not including, `below`. */
export const pick = (random: Random, below: number): number => Math.floor(random() * below);
