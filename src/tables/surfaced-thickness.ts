import type { SurfacedRow } from '../core/lumber/surfaced-thickness.ts';

/** Rough thickness in quarters, and what it surfaces to on two sides, in sixteenths of an inch. */
const sixteenths: readonly (readonly [quarters: number, surfaced: number])[] = [
  [3, 9],
  [4, 13],
  [5, 17],
  [6, 21],
  [8, 28],
  [12, 44],
  [16, 60],
];

/** Hardwood lumber, standard thicknesses surfaced two sides. */
export const surfacedThicknesses: readonly SurfacedRow[] = sixteenths.map(([quarters, surfaced]) => ({
  quarters,
  mm: (surfaced * 254) / 160,
  source: 'surfaced-thickness',
}));
