import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { taperStretches } from '../../../src/core/breakdown/clear-stretches.ts';
import { Draft, type DraftBlank } from '../../../src/core/breakdown/draft.ts';
import { fewestRips } from '../../../src/core/breakdown/fewest-rips.ts';
import { bestPlan } from '../../../src/core/breakdown/plan-breakdown.ts';
import { planBreaches } from '../../../src/core/breakdown/plan-validity.ts';
import type { BreakdownPlan, BreakdownProblem } from '../../../src/core/breakdown/problem-types.ts';
import { rackOf } from '../../../src/core/breakdown/rack.ts';
import { purchasePhrase, shortages } from '../../../src/core/breakdown/shortages.ts';
import { widestStrip } from '../../../src/core/breakdown/strip-limits.ts';
import { outside } from '../../setup/outside.ts';
import { randomProblem } from './random-problem.ts';
import { smallProblem } from './small-problem.ts';

const solve = (asked: BreakdownProblem): BreakdownPlan => {
  const plan = bestPlan(asked, { effort: 0.2 });
  if (isProblem(plan)) throw new Error(plan.message.text);
  return plan;
};
const { shop, boards, parts } = smallProblem;
const [board] = boards as [(typeof boards)[0]];
const [lid, rail] = parts as [(typeof parts)[0], (typeof parts)[0]];

describe('widestStrip', () => {
  it('narrows with the square root of what the thickness spares for the hollow', () => {
    // Geometry, by hand: 27 - 2 x 1 - 24 = 1 left, hollow 4 over 210: 210 x sqrt(1 / 4) = 105.
    expect(widestStrip(shop, { ...board, cup: 4 }, { ...lid, thickness: 24 }, 1030)).toBeCloseTo(105, 9);
    expect(widestStrip(shop, { ...board, cup: 4 }, { ...lid, thickness: 26 }, 1030)).toBe(0);
  });

  it('is limited by what flattens it', () => {
    const wide = { ...board, width: 400 };
    expect(widestStrip(shop, wide, rail, 500)).toBe(200);
    expect(widestStrip({ ...shop, flattenBy: 'planer-sled' }, wide, rail, 500)).toBe(300);
    expect(widestStrip({ ...shop, flattenBy: 'hand-plane' }, wide, rail, 500)).toBe(400);
  });
});

describe('fewestRips', () => {
  it('rips equally, or one fewer at full width where equal strips would be too narrow', () => {
    expect(fewestRips(shop, 210, 150)).toEqual({ strips: 2, width: 103.5, gives: 199 });
    expect(fewestRips({ ...shop, minStrip: 120 }, 210, 150)).toEqual({ strips: 1, width: 150, gives: 146 });
    expect(fewestRips(shop, 49, 150).strips).toBe(0);
  });
});

describe('clear stretches', () => {
  it('keeps blanks inside them, for random boards with a defect across the middle', () => {
    for (let seed = 1; seed <= 10; seed++) {
      const plain = randomProblem(seed, 3, 3);
      const flawed = plain.boards.map((each) => {
        const half = Math.floor(each.length * 0.45);
        const left = { start: 0, length: half, offset: 0, width: each.width - 20 };
        return { ...each, clear: [left, { ...left, start: each.length - half, offset: 20 }] };
      });
      const asked = {
        ...plain,
        boards: flawed,
        parts: plain.parts.map((part) => ({ ...part, length: Math.min(part.length, 900) })),
      };
      expect(planBreaches(asked, solve(asked))).toEqual([]);
      // A plan that overlooks the defects must be caught: the check itself is under test here.
      const careless = solve({ ...asked, boards: plain.boards });
      expect(planBreaches(asked, careless)).not.toEqual([]);
    }
  });

  it('leaves a kerf between blanks of stretches that touch', () => {
    const clear = [1030, 1030].map((length, index) => ({ start: index * 1030, length, offset: 0, width: 210 }));
    // Two blanks of 1030 would fill both stretches and leave none for the kerf.
    const asked = { ...smallProblem, boards: [{ ...board, clear }], parts: [lid] };
    const plan = solve(asked);
    expect(planBreaches(asked, plan)).toEqual([]);
    expect(plan.short).toHaveLength(1);
  });

  it('steps a taper inside its edges', () => {
    expect(taperStretches(2400, 240, 200, [1200, 2400])).toEqual([
      { start: 0, length: 1200, offset: 0, width: 220 },
      { start: 1200, length: 1200, offset: 0, width: 200 },
    ]);
  });
});

describe('Draft', () => {
  it('does not lengthen a blank whose strips would lose their thickness to the longer bow', () => {
    // By hand: 27 - 2 - 6 x (length / 2450)^2 must leave 24: a length of 1000 at most.
    const bowed = { ...smallProblem, boards: [{ ...board, bow: 6 }], parts: [{ ...rail, thickness: 24 }] };
    const draft = new Draft(rackOf(bowed));
    const blank = draft.open(0, 500);
    draft.rip(blank, 0, 80, 1);
    const opened = draft.blanks[blank] as DraftBlank;
    expect(draft.canLengthen(opened, 1000)).toBe(true);
    expect(draft.canLengthen(opened, 1001)).toBe(false);
    expect(draft.canLengthen({ ...opened, strips: [] }, 2451)).toBe(false);
  });
});

describe('shortages', () => {
  const why = (asked: BreakdownProblem) => shortages(asked, solve(asked));

  it('are none when all is covered', () => {
    expect(why(smallProblem)).toEqual([]);
  });

  it('say what to buy, in board feet at the width in the rack', () => {
    const asked = { ...smallProblem, boards: [{ ...board, length: 1100 }] };
    const [first] = why({ ...asked, parts: [lid] });
    // By hand: one blank gives 199 of 360; 161 short takes one more: 1030 x 210 x 27 mm.
    expect(first).toMatchObject({
      part: 'lid',
      units: 1,
      missingWidth: 161,
      buy: { length: 1030, width: 210, shortest: 1030 },
    });
    // Doubles leave only rounding.
    outside({
      what: 'a board of 1030 x 210 x 27 mm to buy: board feet',
      source: 'nist-sp811',
      at: '144 cubic inches a board foot',
      expected: (1030 * 210 * 27) / (144 * 25.4 ** 3),
      got: first?.buy?.boardFeet,
      tolerance: 5e-10,
    });
    expect(first?.reason.text).toMatch(/lid leave \{0\}/);
    expect(first?.buy && purchasePhrase(first.buy).text).toMatch(/^Buy \{0\} of A/);
  });

  it.each<[string, BreakdownProblem, RegExp]>([
    [
      'nothing allowed',
      {
        ...smallProblem,
        boards: [...boards, { ...board, id: 'Z', species: 'Z' }],
        parts: [lid, { ...rail, species: 'Z' }],
        wishes: { keepOut: ['Z'] },
      },
      /No board that rail/,
    ],
    [
      'no free length',
      {
        ...smallProblem,
        boards: [{ ...board, clear: [{ start: 0, length: 900, offset: 0, width: 210 }] }],
        parts: [lid],
      },
      /No free length for lid/,
    ],
    ['too narrow', { ...smallProblem, boards: [{ ...board, width: 79 }], parts: [rail] }, /is \{0\} wide/],
    ['too thin', { ...smallProblem, parts: [{ ...rail, thickness: 26 }] }, /No board still gives rail/],
    ['used up', { ...smallProblem, boards: [board], parts: [{ ...rail, quantity: 40 }] }, /hold no more blanks/],
  ])('give a reason: %s', (_, asked, reason) => {
    expect(why(asked)[0]?.reason.text).toMatch(reason);
  });
});
