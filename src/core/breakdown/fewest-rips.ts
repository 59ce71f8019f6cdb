import type { Shop } from './problem-types.ts';

/** How a width is ripped for a panel: so many strips of one width, and the panel width that they give. */
export interface Rips {
  readonly strips: number;
  readonly width: number;
  readonly gives: number;
}

const noRips: Rips = { strips: 0, width: 0, gives: 0 };

/**
 * The rips that give most panel width: the fewest equal strips, because every strip loses a kerf and two edges.
 *
 * @param shop kerf, edge allowance and narrowest strip, mm
 * @param available width to rip, mm
 * @param widest strip that may be made, mm
 * @returns strips, their width and the jointed width that they give together, mm; no strips when none can be made
 * @valid straight, parallel rips
 * @example fewestRips({ ...smallProblem.shop, ripKerf: 3.2, edgeAllowance: 3.2 }, 325, 110)
 *   // => { strips: 3, width: 106.2, gives: 309.0 }
 * @source geometry
 */
export function fewestRips(shop: Shop, available: number, widest: number): Rips {
  const { minStrip, ripKerf, edgeAllowance } = shop;
  if (available < minStrip || widest < minStrip) return noRips;
  const enough = Math.ceil((available + ripKerf) / (widest + ripKerf));
  const equal = (available + ripKerf) / enough - ripKerf;
  // Too many to be wide enough: one fewer at full width, and the rest is left over.
  const strips = equal >= minStrip ? enough : enough - 1;
  const width = equal >= minStrip ? Math.min(equal, widest) : widest;
  return { strips, width, gives: strips * (width - edgeAllowance) };
}
