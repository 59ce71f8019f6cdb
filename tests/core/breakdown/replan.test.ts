import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { bestPlan } from '../../../src/core/breakdown/plan-breakdown.ts';
import { planBreaches } from '../../../src/core/breakdown/plan-validity.ts';
import type { Blank, BreakdownPlan, BreakdownProblem } from '../../../src/core/breakdown/problem-types.ts';
import { replan } from '../../../src/core/breakdown/replan.ts';
import { randomProblem } from './random-problem.ts';

const solve = (asked: BreakdownProblem, startFrom?: BreakdownPlan): BreakdownPlan => {
  const plan = bestPlan(asked, startFrom && { startFrom });
  if (isProblem(plan)) throw new Error(plan.message.text);
  return plan;
};

describe('replan', () => {
  it.each([1, 2, 3, 4, 5, 6])('goes around what is cut and makes up for a spoilt strip (%i)', (seed) => {
    const asked = randomProblem(seed, 4, 2);
    const plan = solve(asked);
    const [first, , third] = plan.blanks as [Blank, Blank, Blank];
    const spoiltFirst = first.strips.map((strip, at) => (at === 0 ? { ...strip, spoilt: true } : strip));
    const rest = replan(asked, [{ ...first, strips: spoiltFirst }, third]);
    const again = solve(rest, plan);
    expect(planBreaches(rest, again)).toEqual([]);
    expect(again.short).toEqual([]);
    for (const at of [0, 2]) {
      const cut = plan.blanks[at];
      const kept = again.blanks.find((blank) => blank.board === cut?.board && blank.start === cut.start);
      expect(kept?.strips.slice(0, cut?.strips.length)).toMatchObject(cut?.strips ?? []);
    }
    // Counted by hand: the spoilt strip gives nothing to its unit.
    const spoilt = plan.blanks[0]?.strips[0];
    const part = asked.parts.find(({ id }) => id === spoilt?.part);
    const cutAt = plan.blanks[0];
    const widths = again.blanks.flatMap(({ board, start, strips }) =>
      strips.flatMap((strip, at) => {
        const bad = board === cutAt?.board && start === cutAt.start && at === 0;
        return !bad && strip.part === spoilt?.part && strip.unit === spoilt.unit
          ? [strip.width - asked.shop.edgeAllowance]
          : [];
      }),
    );
    expect(widths.reduce((sum, width) => sum + width, 0)).toBeGreaterThanOrEqual((part?.width ?? 0) - 1e-6);
  });

  it('counts strips of parts that are no longer wanted as spoilt, however often it is asked', () => {
    const asked = randomProblem(1, 3, 2);
    const plan = solve(asked);
    const gone = plan.blanks[0]?.strips[0]?.part ?? '';
    const fewer = { ...asked, parts: asked.parts.filter(({ id }) => id !== gone) };
    const rest = replan(fewer, plan.blanks.slice(0, 1));
    expect(rest.cut).toHaveLength(1);
    expect(rest.cut?.[0]?.strips[0]).toMatchObject({ part: gone, spoilt: true });
    expect(planBreaches(rest, solve(rest))).toEqual([]);
    expect(replan(rest, rest.cut ?? [])).toEqual(rest);
  });
});
