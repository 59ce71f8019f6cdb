import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Phrase } from '../../../src/core/answer/phrase.ts';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { boardCuts } from '../../../src/core/breakdown/board-cuts.ts';
import { panelLayout } from '../../../src/core/breakdown/panel-layout.ts';
import { bestPlan } from '../../../src/core/breakdown/plan-breakdown.ts';
import { planTotals } from '../../../src/core/breakdown/plan-totals.ts';
import type { BreakdownPlan, RoughBoard } from '../../../src/core/breakdown/problem-types.ts';
import { independentCheck } from './independent-check.ts';
import { randomProblem } from './random-problem.ts';
import { smallProblem } from './small-problem.ts';

const lid = (width: number) => ({ width, part: 'lid', unit: 1 });
const byHand: BreakdownPlan = {
  blanks: [
    { board: 'B1', start: 0, length: 1030, strips: [lid(103.5), lid(103.5)] },
    { board: 'B1', start: 1033, length: 1030, strips: [lid(103.5), lid(103.5)] },
    { board: 'B2', start: 0, length: 500, strips: [1, 2].map((unit) => ({ width: 80, part: 'rail', unit })) },
    { board: 'B2', start: 503, length: 500, strips: [3, 4].map((unit) => ({ width: 80, part: 'rail', unit })) },
  ],
  short: [],
};
const solve = (seed: number) => {
  const asked = randomProblem(seed, 4, 2);
  const plan = bestPlan(asked, { effort: 0.1 });
  if (isProblem(plan)) throw new Error(plan.message.text);
  return { asked, plan };
};

describe('planTotals', () => {
  it('adds up what becomes of the wood, by hand', () => {
    const { consumed, volume, wood, yield: share, strips, boards } = planTotals(smallProblem, byHand);
    // To 1e-9 m2, a thousandth of a square millimetre: sums of doubles.
    expect(consumed).toBeCloseTo((210 * 1033 * 2 + 180 * 503 * 2) / 1e6, 9);
    // All three boards are 27 thick.
    expect(volume).toBeCloseTo((consumed * 27) / 1000, 12);
    expect(wood.parts).toBeCloseTo((360 * 980 + 4 * 76 * 450) / 1e6, 9);
    expect(wood.edges).toBeCloseTo((4 * 4 * 980 + 4 * 4 * 450) / 1e6, 9);
    expect(wood.ends).toBeCloseTo((4 * 103.5 * 50 + 4 * 80 * 50) / 1e6, 9);
    expect(wood.kerf).toBeCloseTo((210 * 3 * 2 + 180 * 3 * 2 + 2 * 3 * 1030 + 2 * 6 * 500) / 1e6, 9);
    expect(wood.offcuts).toBeCloseTo(((4 * 99.5 - 360) * 980 + 2 * (180 - 163 - 3) * 500) / 1e6, 9);
    expect(wood.leftovers).toBeCloseTo((210 * (2450 - 2066) + 180 * (2450 - 1006)) / 1e6, 9);
    expect(wood.defects).toBe(0);
    expect(share.value).toBeCloseTo((100 * wood.parts) / consumed, 9);
    expect(share.working.steps).toHaveLength(1);
    expect([strips, boards]).toEqual([8, 2]);
  });

  it('counts what lies outside the clear stretches as defects', () => {
    const clear = [{ start: 0, length: 1200, offset: 10, width: 200 }];
    const boards = smallProblem.boards.map((board) => (board.id === 'B2' ? { ...board, clear } : board));
    const { wood } = planTotals({ ...smallProblem, boards }, byHand);
    expect(wood.defects).toBeCloseTo((180 * 2450 - 1200 * 200) / 1e6, 9);
  });

  // Tolerance 1e-9 m2 as above. The crosscut at 1030 runs through 2 mm of the first stretch and 1 mm of what follows it.
  it.each([
    ['a narrower step of a taper', { start: 1032, length: 1418, offset: 0, width: 150 }, 150 * 1, 150 * 1417],
    ['a defect', { start: 1500, length: 950, offset: 0, width: 100 }, 0, 100 * 950],
  ])('counts a crosscut that runs on into %s once', (_, next, beyond, left) => {
    const clear = [{ start: 0, length: 1032, offset: 0, width: 200 }, next];
    const boards = smallProblem.boards.map((board) => (board.id === 'B1' ? { ...board, clear } : board));
    const strips = [lid(103.5), lid(90)];
    const { wood } = planTotals(
      { ...smallProblem, boards },
      { blanks: [{ board: 'B1', start: 0, length: 1030, strips }], short: [] },
    );
    expect(wood.kerf).toBeCloseTo((200 * 2 + beyond + 2 * 3 * 1030) / 1e6, 9);
    expect(wood.leftovers).toBeCloseTo(left / 1e6, 9);
  });

  it('yields nothing for an empty plan', () => {
    expect(planTotals(smallProblem, { blanks: [], short: [] }).yield.value).toBe(0);
  });

  it('agrees with the independent check, and no share is negative, for random problems', () => {
    fc.assert(
      fc.property(fc.nat(), (seed) => {
        const { asked, plan } = solve(seed);
        const { consumed, wood } = planTotals(asked, plan);
        expect(consumed).toBeCloseTo(independentCheck(asked, plan).area, 9);
        for (const area of Object.values(wood)) expect(area).toBeGreaterThanOrEqual(-1e-9);
      }),
      { numRuns: 30 },
    );
  });
});

describe('boardCuts', () => {
  const cutsOf = (plan: BreakdownPlan, id: string) => {
    const board = smallProblem.boards.find((one) => one.id === id) as RoughBoard;
    return boardCuts(smallProblem, plan, board);
  };
  const said = ({ text, quantities }: Phrase) => [text, ...Object.values(quantities).map(({ value }) => value)];

  it('measures every crosscut from the same end and sets the fence once for equal strips', () => {
    const { crosscuts, blanks, leftover } = cutsOf(byHand, 'B1');
    expect(crosscuts.map(({ place, at }) => [place, at])).toEqual([
      [1030, 1030],
      [2063, 2063],
    ]);
    // Nothing is left beside the second strip: 103.5 + 3 + 103.5 are the board's 210.
    const one = [['Rip one strip with the fence at {0}; what is left is the last strip.', 103.5]];
    expect(blanks.map(({ rips }) => rips.map(said))).toEqual([one, one]);
    expect(leftover).toBe(2450 - 2066);
    const two = [['Rip 2 strips with the fence at {0}.', 80]];
    expect(cutsOf(byHand, 'B2').blanks.map(({ rips }) => rips.map(said))).toEqual([two, two]);
  });

  it('begins a blank that lies further along with a cut of its own, and needs none at the board’s end', () => {
    const plan = { blanks: [{ board: 'B3', start: 1420, length: 1030, strips: [lid(150)] }], short: [] };
    const { crosscuts, blanks, leftover } = cutsOf(plan, 'B3');
    expect(crosscuts.map(({ at }) => at)).toEqual([1417]);
    expect(blanks[0]?.rips.map(said)).toEqual([['Rip one strip with the fence at {0}.', 150]]);
    expect(leftover).toBe(0);
  });
});

describe('panelLayout', () => {
  it('lays strips side by side and groups neighbours for the planer', () => {
    const { strips, width, groups } = panelLayout(smallProblem.shop, byHand, 'lid', 1);
    expect(strips.map(({ offset }) => offset)).toEqual([0, 99.5, 199, 298.5]);
    expect(width).toBe(398);
    expect(groups).toEqual([
      [0, 1],
      [2, 3],
    ]);
  });

  it('leaves the row as it grew when that makes as few groups, and changes it when another makes fewer', () => {
    const order = (...widths: number[]) => {
      const plan = { blanks: [{ board: 'B1', start: 0, length: 1030, strips: widths.map(lid) }], short: [] };
      return panelLayout(smallProblem.shop, plan, 'lid', 1).strips.map(({ width }) => width);
    };
    // By hand, each less 4 for its edges, within 300: 146 + 146, 146 + 146; 176 + 116, 186 + 106, but 176 + 186 is too wide.
    expect(order(150, 150, 150, 150)).toEqual([150, 150, 150, 150]);
    expect(order(180, 190, 120, 110)).toEqual([180, 120, 190, 110]);
  });

  it('leaves out what is spoilt, and makes one group where no planer limits it', () => {
    const blanks = [
      { board: 'B1', start: 0, length: 1030, strips: [lid(150), { ...lid(150), spoilt: true }, lid(150), lid(150)] },
    ];
    const { strips, groups } = panelLayout(
      { ...smallProblem.shop, planerWidth: Number.POSITIVE_INFINITY },
      { blanks },
      'lid',
      1,
    );
    expect(strips.map(({ strip }) => strip)).toEqual([0, 2, 3]);
    expect(groups).toEqual([[0, 1, 2]]);
  });

  it('makes the fewest groups that fit, against trying them all', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 50, max: 150 }), { minLength: 1, maxLength: 7 }), (widths) => {
        const plan = { blanks: [{ board: 'B1', start: 0, length: 1030, strips: widths.map(lid) }], short: [] };
        const { strips, groups } = panelLayout(smallProblem.shop, plan, 'lid', 1);
        expect(groups.flat()).toEqual(strips.map((_, at) => at));
        const wide = (group: readonly number[]) => group.reduce((sum, at) => sum + (strips[at]?.jointed ?? 0), 0);
        for (const group of groups) expect(wide(group)).toBeLessThanOrEqual(300);
        // Every way to part the strips: each joins one of the groups before it, or begins another.
        const least = (used: readonly number[], at: number): number => {
          const next = strips[at]?.jointed;
          if (next === undefined) return used.length;
          const joined = used.map((width, to) =>
            width + next <= 300 ? least(used.with(to, width + next), at + 1) : 99,
          );
          return Math.min(...joined, least([...used, next], at + 1));
        };
        expect(groups.length).toBe(least([], 0));
      }),
    );
  });
});
