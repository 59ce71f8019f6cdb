import type { BreakdownPlan, BreakdownProblem, CutBlank } from './problem-types.ts';

/** A blank of a plan that is cut, and which of its strips turned out bad. */
export interface Ticked {
  /** Place of the blank in the plan. */
  readonly blank: number;
  /** Places of the spoilt strips in the blank. */
  readonly spoilt?: readonly number[];
}

/**
 * The rest of a breakdown once some of its blanks are cut: what is cut stays, spoilt strips give nothing.
 *
 * Strips of parts that are no longer asked for stay in their blanks as spoilt ones: the wood is cut.
 *
 * @param asked the problem that was planned, with any changes to boards and parts already made, mm
 * @param plan what was planned
 * @param ticked blanks that are cut
 * @returns the problem to plan again; give the old plan as `startFrom`, so that what needn't change doesn't cost wood
 * @valid any plan of the problem
 * @example replan(oneRail, lastPlan(oneRail), [{ blank: 0, spoilt: [0] }])
 *   // => { cut: [{ length: 400, strips: [{ part: 'rail', spoilt: true }] }] }
 * @source the statement of the problem
 */
export function replan(asked: BreakdownProblem, plan: BreakdownPlan, ticked: readonly Ticked[]): BreakdownProblem {
  const quantity = new Map(asked.parts.map((part) => [part.id, part.quantity]));
  const cut = ticked.flatMap(({ blank: at, spoilt = [] }): CutBlank[] => {
    const blank = plan.blanks[at];
    if (!blank) return [];
    const strips = blank.strips.map((strip, index) => {
      const wanted = strip.unit <= (quantity.get(strip.part) ?? 0);
      return spoilt.includes(index) || !wanted ? { ...strip, spoilt: true } : strip;
    });
    return [{ ...blank, strips }];
  });
  const again = new Set(cut.map((blank) => `${blank.board}@${blank.start}`));
  const before = (asked.cut ?? []).filter((blank) => !again.has(`${blank.board}@${blank.start}`));
  return { ...asked, cut: [...before, ...cut] };
}
