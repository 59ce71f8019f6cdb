import type { BreakdownPlan, Shop } from './problem-types.ts';

/** One strip where it lies in a panel. */
export interface LaidStrip {
  /** Place of the blank in the plan, and of the strip in the blank. */
  readonly blank: number;
  readonly strip: number;
  readonly board: string;
  /** Rough width, and width once both edges are jointed, mm. */
  readonly width: number;
  readonly jointed: number;
  /** Where its left edge lies, from the panel's left edge, mm. */
  readonly offset: number;
}

export interface PanelLayout {
  readonly part: string;
  readonly unit: number;
  readonly strips: readonly LaidStrip[];
  /** Jointed width of the whole, mm: at least the part's width unless it is short. */
  readonly width: number;
  /** Strips glued up together first, so that each group still passes the planer: places in `strips`, in order. */
  readonly groups: readonly (readonly number[])[];
}

/**
 * How the strips of one panel are laid side by side, and which are glued up together before they are planed.
 *
 * A strip wider than the planer is a group by itself.
 *
 * @param shop planer width and edge allowance, mm
 * @param plan blanks and strips, mm
 * @param part id of the part
 * @param unit which of its pieces, from 1
 * @returns strips of one blank side by side as they grew, blanks of one board next to each other; the fewest groups of
 *   neighbours that still fit the planer, as even as that allows
 * @valid plans without breaches
 * @example panelLayout(smallProblem.shop, planOf(blank('B1', 0, 1030, [104, 'lid'], [104, 'lid'], [104, 'lid'])), 'lid', 1)
 *   // => { width: 300, groups: [[0, 1, 2]] }
 * @source common practice; the fewest groups by filling each as far as it goes
 */
export function panelLayout(shop: Shop, plan: BreakdownPlan, part: string, unit: number): PanelLayout {
  const found = plan.blanks
    .map((blank, at) => ({ blank, at }))
    .sort((a, b) =>
      a.blank.board === b.blank.board ? a.blank.start - b.blank.start : a.blank.board < b.blank.board ? -1 : 1,
    )
    .flatMap(({ blank, at }) =>
      blank.strips.flatMap((strip, index) =>
        strip.part === part && strip.unit === unit
          ? [
              {
                blank: at,
                strip: index,
                board: blank.board,
                width: strip.width,
                jointed: strip.width - shop.edgeAllowance,
              },
            ]
          : [],
      ),
    );
  let offset = 0;
  const strips = found.map((strip) => {
    const laid = { ...strip, offset };
    offset += strip.jointed;
    return laid;
  });
  const groups = fewestGroups(
    strips.map((strip) => strip.jointed),
    shop.planerWidth,
  );
  return { part, unit, strips, width: offset, groups };
}

/** Neighbours in the fewest groups no wider than a limit, the widest group as narrow as that number of groups allows. */
function fewestGroups(widths: readonly number[], limit: number): number[][] {
  const count = filled(widths, limit).length;
  // The widest group is the sum of some neighbours: the least such sum that still makes do with as few groups.
  const sums = widths.flatMap((_, from) =>
    widths.slice(from).map((_, many) => total(widths.slice(from, from + many + 1))),
  );
  const least = sums.filter((sum) => sum <= limit && filled(widths, sum).length === count).sort((a, b) => a - b)[0];
  return filled(widths, least ?? limit);
}

const total = (widths: readonly number[]): number => widths.reduce((sum, width) => sum + width, 0);

function filled(widths: readonly number[], limit: number): number[][] {
  const groups: number[][] = [];
  let used = Number.POSITIVE_INFINITY;
  for (const [at, width] of widths.entries()) {
    // Sums of the same widths in another order may differ by a rounding.
    if (used + width > limit * (1 + 1e-12)) {
      groups.push([]);
      used = 0;
    }
    groups.at(-1)?.push(at);
    used += width;
  }
  return groups;
}
