import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { bestPlan, type PlanOptions } from '../../../src/core/breakdown/plan-breakdown.ts';
import { planBreaches } from '../../../src/core/breakdown/plan-validity.ts';
import type { BreakdownPlan, BreakdownProblem } from '../../../src/core/breakdown/problem-types.ts';
import { independentCheck } from './independent-check.ts';
import { randomProblem } from './random-problem.ts';

const effort = 0.1;
const problems = fc
  .record({
    seed: fc.nat(),
    kinds: fc.integer({ min: 1, max: 6 }),
    stock: fc.double({ min: 1, max: 2.5, noNaN: true }),
  })
  .map(({ seed, kinds, stock }) => randomProblem(seed, kinds, stock));

const solve = (asked: BreakdownProblem, options: PlanOptions = { effort }): BreakdownPlan => {
  const plan = bestPlan(asked, options);
  if (isProblem(plan)) throw new Error(plan.message.text);
  return plan;
};

describe('for random problems', () => {
  it('every plan keeps the rules, by the core and by the independent check', () => {
    fc.assert(
      fc.property(problems, (asked) => {
        const plan = solve(asked);
        expect(planBreaches(asked, plan)).toEqual([]);
        expect(independentCheck(asked, plan).breaches).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('more boards never make a plan worse when it starts from the plan without them', () => {
    fc.assert(
      fc.property(problems, fc.nat(), (asked, seed) => {
        const before = solve(asked);
        const more = randomProblem(seed, 1, 1).boards.map((board) => ({ ...board, id: `more ${board.id}` }));
        const wider = { ...asked, boards: [...asked.boards, ...more] };
        const after = solve(wider, { effort, startFrom: before });
        const [old, now] = [independentCheck(asked, before), independentCheck(wider, after)];
        expect(now.short).toBeLessThanOrEqual(old.short);
        // 1e-5: the weight of strips and boards may trade that share of wood.
        if (now.short === old.short && old.short === 0) expect(now.area).toBeLessThanOrEqual(old.area * (1 + 1e-5));
      }),
      { numRuns: 30 },
    );
  });

  it('scaling all lengths scales the plan', () => {
    // By powers of two, which doubles carry without rounding: the plan must be the very same.
    fc.assert(
      fc.property(problems, fc.constantFrom(0.25, 0.5, 2, 8), (asked, factor) => {
        const plan = solve(asked);
        expect(solve(scaledProblem(asked, factor))).toEqual(scaledPlan(plan, factor));
      }),
      { numRuns: 30 },
    );
  });
});

function scaledProblem(asked: BreakdownProblem, factor: number): BreakdownProblem {
  const scale = <T extends object>(record: T): T =>
    Object.fromEntries(
      Object.entries(record).map(([name, value]) => [
        name,
        typeof value === 'number' && name !== 'quantity' ? value * factor : value,
      ]),
    ) as T;
  return { shop: scale(asked.shop), boards: asked.boards.map(scale), parts: asked.parts.map(scale) };
}

const scaledPlan = (plan: BreakdownPlan, factor: number): BreakdownPlan => ({
  blanks: plan.blanks.map((blank) => ({
    ...blank,
    start: blank.start * factor,
    length: blank.length * factor,
    strips: blank.strips.map((strip) => ({ ...strip, width: strip.width * factor })),
  })),
  short: plan.short.map((entry) => ({ ...entry, missingWidth: entry.missingWidth * factor })),
});
