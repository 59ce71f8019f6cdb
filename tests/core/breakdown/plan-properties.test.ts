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

  it('whatever is wished, the plan keeps the rules and the wishes, or names the contradiction', () => {
    const some = fc.array(fc.nat(), { maxLength: 2 });
    const flags = { longLeftovers: fc.boolean(), fewerSeams: fc.boolean() };
    const drawn = fc.record({
      keepOut: some,
      fix: some,
      show: some,
      together: some,
      good: fc.integer({ min: 1, max: 4 }),
      ...flags,
    });
    fc.assert(
      fc.property(problems, drawn, (plain, { keepOut, fix, show, together, good, ...rest }) => {
        const boards = plain.boards.map((board, at) => ({ ...board, goodFace: at % good === 0 }));
        const boardOf = (n: number) => boards[n % boards.length]?.id ?? '';
        const partOf = (n: number) => plain.parts[n % plain.parts.length]?.id ?? '';
        const wishes = {
          ...rest,
          keepOut: keepOut.map(boardOf),
          fix: fix.map((n) => ({ part: partOf(n >> 4), board: boardOf(n) })),
          show: show.map(partOf),
          together: together.map((n) => ({ part: partOf(n), boards: 1 + (n % 2) })),
        };
        const asked = { ...plain, boards, wishes };
        const plan = bestPlan(asked, { effort });
        if (isProblem(plan)) {
          expect(plan.field).toMatch(/^wishes/);
          return;
        }
        expect(planBreaches(asked, plan)).toEqual([]);
        for (const { board, strips } of plan.blanks) {
          expect(wishes.keepOut).not.toContain(board);
          for (const { part } of strips) {
            const fixed = wishes.fix.filter((wish) => wish.part === part);
            if (fixed.length > 0) expect(fixed.map((wish) => wish.board)).toContain(board);
          }
        }
        for (const { part, boards: most } of wishes.together) {
          const unit = (n: number) =>
            plan.blanks.filter(({ strips }) => strips.some((strip) => strip.part === part && strip.unit === n));
          const whole = [1, 2, 3].filter((n) => !plan.short.some((entry) => entry.part === part && entry.unit === n));
          for (const n of whole) expect(new Set(unit(n).map(({ board }) => board)).size).toBeLessThanOrEqual(most);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('scaling all lengths scales the plan', () => {
    // By powers of two, which doubles carry without rounding: the plan must be the very same.
    fc.assert(
      fc.property(problems, fc.constantFrom(0.125, 0.25, 0.5, 2, 4), (asked, factor) => {
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
