import { describe, expect, it } from 'vitest';
import { isProblem, type Outcome } from '../../../src/core/answer/problem.ts';
import { bestPlan } from '../../../src/core/breakdown/plan-breakdown.ts';
import { planTotals } from '../../../src/core/breakdown/plan-totals.ts';
import { planBreaches } from '../../../src/core/breakdown/plan-validity.ts';
import type { Wishes } from '../../../src/core/breakdown/problem-types.ts';
import { wishCosts } from '../../../src/core/breakdown/wish-cost.ts';
import { randomProblem } from './random-problem.ts';
import { smallProblem } from './small-problem.ts';

const sure = <T>(outcome: Outcome<T>): T => {
  if (isProblem(outcome)) throw new Error(outcome.message.text);
  return outcome as T;
};
const planWith = (wishes: Wishes) => sure(bestPlan({ ...smallProblem, wishes }));
const boardsOf = (wishes: Wishes, part: string) => [
  ...new Set(planWith(wishes).blanks.flatMap((b) => (b.strips.some((s) => s.part === part) ? [b.board] : []))),
];

describe('wishes', () => {
  it('keeps a board out', () => {
    const used = planWith({}).blanks[0]?.board ?? '';
    expect(planWith({ keepOut: [used] }).blanks.map((blank) => blank.board)).not.toContain(used);
  });

  it.each(['B1', 'B2', 'B3'])('takes a part from board %s alone', (board) => {
    expect(boardsOf({ fix: [{ part: 'rail', board }] }, 'rail')).toEqual([board]);
  });

  it('takes a panel from one board, or from two neighbours', () => {
    expect(boardsOf({ together: [{ part: 'lid', boards: 1 }] }, 'lid')).toHaveLength(1);
    const plain = randomProblem(3, 4, 2);
    const panel = plain.parts.find((part) => part.panel)?.id ?? '';
    const asked = { ...plain, wishes: { together: [{ part: panel, boards: 2 }] } };
    const plan = sure(bestPlan(asked));
    const places = plan.blanks.flatMap(({ board, strips }) =>
      strips.some((strip) => strip.part === panel && strip.unit === 1)
        ? [asked.boards.findIndex((b) => b.id === board)]
        : [],
    );
    expect(Math.max(...places) - Math.min(...places)).toBeLessThanOrEqual(1);
    expect(planBreaches(asked, plan)).toEqual([]);
  });

  it('makes fewer seams and leaves longer pieces when that is wished', () => {
    const strips = (seed: number, wishes: Wishes) => {
      const asked = { ...randomProblem(seed, 6, 2), wishes };
      return planTotals(asked, sure(bestPlan(asked))).strips;
    };
    const seeds = [11, 12, 13, 14];
    const plainStrips = seeds.reduce((sum, seed) => sum + strips(seed, {}), 0);
    expect(seeds.reduce((sum, seed) => sum + strips(seed, { fewerSeams: true }), 0)).toBeLessThan(plainStrips);
    const asked = randomProblem(12, 6, 2);
    const plain = sure(bestPlan(asked));
    const long = sure(bestPlan({ ...asked, wishes: { longLeftovers: true } }));
    const squares = (plan: typeof plain) =>
      asked.boards.reduce((sum, { id, length, width }) => {
        const used = plan.blanks
          .filter((b) => b.board === id)
          .reduce((total, b) => total + b.length + asked.shop.crosscutKerf, 0);
        return sum + width * Math.max(0, length - used) ** 2;
      }, 0);
    expect(squares(long)).toBeGreaterThan(squares(plain));
  });

  it('says what each wish costs in wood, and in units', () => {
    // The lid from B3 alone: two blanks give 2 x (160 - 3 - 8) = 298 of 360 where the jointer takes 150 at most.
    const wishes: Wishes = { keepOut: ['B1'], fix: [{ part: 'lid', board: 'B3' }], fewerSeams: true };
    const asked = { ...smallProblem, wishes };
    const plan = sure(bestPlan(asked));
    const costs = sure(wishCosts(asked, plan));
    expect(costs.map(({ wish, index }) => `${wish} ${index}`)).toEqual(['keepOut 0', 'fix 0', 'fewerSeams 0']);
    expect(costs[1]?.short).toBe(1);
    const cheap = { ...smallProblem, wishes: { keepOut: [sure(bestPlan(smallProblem)).blanks[0]?.board ?? ''] } };
    expect(sure(wishCosts(cheap, sure(bestPlan(cheap))))[0]?.wood).toBeGreaterThan(0);
  });
});
