import { describe, expect, test } from 'vitest';
import { planBreaches, unitCover } from '../../../src/core/breakdown/plan-validity.ts';
import { isCut, newlySpoilt, withSpoilt } from '../../../src/screens/breakdown/cut-state.ts';
import { nextProblem } from '../../../src/screens/breakdown/next-problem.ts';
import type { Plan } from '../../../src/store/records/plan.ts';
import { board, part, piece, planned, shop, solve } from './samples.ts';

const chest = piece([part('lid'), part('front', { width: 350 })]);
const rack = ['a', 'b', 'c', 'd', 'e', 'f'].map((id, n) => board(id, { width: 150 + 10 * n }));
const asked = nextProblem(shop, rack, chest, {}, undefined);
const plan = planned(asked, solve(asked));
const first = plan.blanks[0]?.board ?? '';

const again = (before: Plan, from = rack) => {
  const problem = nextProblem(shop, from, chest, {}, before);
  return { problem, plan: planned(problem, solve(problem, before)) };
};

describe('the rest planned again', () => {
  test('nothing cut: the same question as at first', () => {
    expect(nextProblem(shop, rack, chest, {}, plan)).toEqual(asked);
  });

  test('a board that is cut keeps its blanks where they are', () => {
    const { problem, plan: next } = again({ ...plan, cutDone: [first] });
    const kept = plan.blanks.filter(({ board: id }) => id === first);
    expect(kept.length).toBeGreaterThan(0);
    for (const blank of kept) expect(next.blanks).toContainEqual(blank);
    expect(planBreaches(problem, next)).toEqual([]);
    expect(isCut(planned(problem, next), first)).toBe(true);
  });

  test('a spoilt strip gives nothing, and its panel is made up from other wood', () => {
    const at = plan.blanks.findIndex(({ board: id }) => id === first);
    const spoilt = withSpoilt({ ...plan, cutDone: [first] }, at, 0, true);
    expect(newlySpoilt(spoilt)).toBe(1);
    const { problem, plan: next } = again(spoilt);
    expect(planBreaches(problem, next)).toEqual([]);
    expect(next.short).toEqual([]);
    // By hand: what the strips that are good give, less the edges, is at least the panel's width.
    for (const { id, width } of chest.parts) {
      const good = next.blanks.flatMap(({ strips }) => strips).filter((strip) => strip.part === id && !strip.spoilt);
      const jointed = good.reduce((sum, strip) => sum + strip.width - shop.allowances.edge, 0);
      expect(jointed).toBeGreaterThan(width - 1e-6);
    }
    // It is known now, and asks for nothing more; the plan after that starts from it.
    expect(newlySpoilt(planned(problem, next))).toBe(0);
    const third = again(planned(problem, next));
    expect(planBreaches(third.problem, third.plan)).toEqual([]);
    expect(third.problem.cut?.flatMap(({ strips }) => strips).filter((strip) => strip.spoilt)).toHaveLength(1);
  });

  test('a board that left the rack since it was cut is still there for its blanks', () => {
    const without = rack.map((one) => (one.id === first ? { ...one, state: 'cut' as const } : one));
    const { problem } = again({ ...plan, cutDone: [first] }, without);
    expect(problem.boards.map(({ id }) => id)).toContain(first);
  });

  test('what was left of it and lies in the rack under its own mark is not counted twice', () => {
    const offcut = board('rest', { parentId: first, length: 600 });
    const { problem, plan: next } = again({ ...plan, cutDone: [first] }, [...rack, offcut]);
    const old = plan.blanks.filter(({ board: id }) => id === first).length;
    expect(next.blanks.filter(({ board: id }) => id === first)).toHaveLength(old);
    const cut = problem.boards.find(({ id }) => id === first);
    expect(cut?.clear).toHaveLength(old);
  });

  test('a part that grew is planned at its new size, around what is cut', () => {
    const wider = piece([part('lid', { width: 440 }), part('front', { width: 350 })]);
    const problem = nextProblem(shop, rack, wider, {}, { ...plan, cutDone: [first] });
    const next = solve(problem, plan);
    expect(unitCover(problem, next).every(({ covered }) => covered)).toBe(true);
  });

  test('a part taken off the list leaves its strips as spoilt wood', () => {
    const less = piece([part('front', { width: 350 })]);
    const problem = nextProblem(shop, rack, less, {}, { ...plan, cutDone: rack.map(({ id }) => id) });
    const strips = problem.cut?.flatMap((blank) => blank.strips) ?? [];
    expect(strips.filter((strip) => strip.part === 'lid').length).toBeGreaterThan(0);
    for (const strip of strips) expect(strip.spoilt ?? false).toBe(strip.part === 'lid');
  });
});
