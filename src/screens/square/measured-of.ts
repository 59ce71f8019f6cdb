import type { Measured } from '../../core/square/measured.ts';
import type { Square } from '../../store/records/square.ts';

type Kept = Pick<Square, 'readings' | 'farEnd'>;

/** A check as it is kept. */
export function keptOf(measured: Measured): Kept {
  if (measured.way === 'readings') return { readings: measured.readings };
  const { way, length, width, farEnd, ...diagonals } = measured;
  return { readings: { front: length, left: width, ...diagonals }, farEnd };
}

/** What was measured in a kept check. */
export function measuredOf({ readings, farEnd }: Kept): Measured {
  if (farEnd === undefined) return { way: 'readings', readings };
  const { front: length = 0, left: width = 0, difference, diagonalAC = 0, diagonalBD = 0 } = readings;
  return difference === undefined
    ? { way: 'diagonals', length, width, diagonalAC, diagonalBD, farEnd }
    : { way: 'stick', length, width, difference, farEnd };
}
