import type { BreakdownProblem, CutBlank } from './problem-types.ts';

/**
 * The rest of a breakdown once some blanks are cut: what is cut stays, spoilt strips give nothing.
 *
 * Strips of parts that are no longer asked for stay in their blanks as spoilt ones: the wood is cut.
 *
 * @param asked the problem that was planned, with any changes to boards and parts already made, mm
 * @param cut blanks of its plan that are cut, mm
 * @returns the problem to plan again; give the old plan as `startFrom`, so that what needn't change doesn't cost wood
 * @valid blanks of any plan of the problem
 * @example replan({ ...oneRail, parts: [] }, lastPlan(oneRail).blanks)
 *   // => { cut: [{ length: 400, strips: [{ part: 'rail', spoilt: true }] }] }
 * @source the statement of the problem
 */
export function replan(asked: BreakdownProblem, cut: readonly CutBlank[]): BreakdownProblem {
  const quantity = new Map(asked.parts.map((part) => [part.id, part.quantity]));
  const wanted = (strip: CutBlank['strips'][number]) =>
    strip.unit <= (quantity.get(strip.part) ?? 0) ? strip : { ...strip, spoilt: true };
  return { ...asked, cut: cut.map((blank) => ({ ...blank, strips: blank.strips.map(wanted) })) };
}
