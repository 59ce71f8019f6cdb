import { fewestGroups } from './fewest-groups.ts';
import type { CutBlank, Shop } from './problem-types.ts';

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

/** A plan as far as it goes: strips that are spoilt since belong to no panel. */
interface Planned {
  readonly blanks: readonly CutBlank[];
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
 * @returns strips of one blank side by side as they grew, blanks of one board next to each other, unless another order
 *   needs fewer groups; the fewest groups that still fit the planer
 * @valid plans without breaches
 * @example panelLayout(smallProblem.shop, planOf(blank('B1', 0, 1030, [104, 'lid'], [104, 'lid'], [104, 'lid'])), 'lid', 1)
 *   // => { width: 300, groups: [[0, 1, 2]] }
 * @source common practice; as of `fewestGroups`
 */
export function panelLayout(shop: Shop, plan: Planned, part: string, unit: number): PanelLayout {
  const found = plan.blanks
    .map((blank, at) => ({ ...blank, at }))
    .sort((a, b) => (a.board === b.board ? a.start - b.start : a.board < b.board ? -1 : 1))
    .flatMap(({ board, strips, at: blank }) =>
      strips.flatMap(({ part: own, unit: of, width, spoilt }, strip) =>
        own === part && of === unit && !spoilt
          ? { blank, strip, board, width, jointed: width - shop.edgeAllowance }
          : [],
      ),
    );
  const grouped = fewestGroups(
    found.map(({ jointed }) => jointed),
    shop.planerWidth,
  );
  let offset = 0;
  const strips = grouped.flat().map((at) => {
    const strip = found[at] as (typeof found)[number];
    const laid = { ...strip, offset };
    offset += strip.jointed;
    return laid;
  });
  let next = 0;
  const groups = grouped.map((group) => group.map(() => next++));
  return { part, unit, strips, width: offset, groups };
}
