import { describe, expect, it } from 'vitest';
import { planBreaches } from '../../../src/core/breakdown/plan-validity.ts';
import type { Blank, BreakdownPlan } from '../../../src/core/breakdown/problem-types.ts';
import { smallProblem } from './small-problem.ts';

const lid = (width: number) => ({ width, part: 'lid', unit: 1 });
const rails = (from: number, count: number) =>
  Array.from({ length: count }, (_, index) => ({ width: 80, part: 'rail', unit: from + index }));
const good: Blank[] = [
  { board: 'B1', start: 0, length: 1030, strips: [lid(103.5), lid(103.5)] },
  { board: 'B1', start: 1033, length: 1030, strips: [lid(103.5), lid(103.5)] },
  { board: 'B2', start: 0, length: 500, strips: rails(1, 2) },
  { board: 'B2', start: 503, length: 500, strips: rails(3, 2) },
];
const plan = (change: Partial<Blank>, at = 0): BreakdownPlan => ({
  blanks: good.map((blank, index) => (index === at ? { ...blank, ...change } : blank)),
  short: [],
});
const texts = (asked: typeof smallProblem, checked: BreakdownPlan) =>
  planBreaches(asked, checked)
    .map(({ message }) => message.text)
    .join(' ');

describe('planBreaches', () => {
  it('finds nothing wrong with a plan made by hand', () => {
    expect(planBreaches(smallProblem, { blanks: good, short: [] })).toEqual([]);
  });

  it.each([
    [plan({ board: 'X' }), /no board X/],
    [plan({ start: -1 }), /outside/],
    [plan({ start: 1500 }), /outside/],
    [plan({ strips: [lid(104), lid(104)] }), /strips need/],
    [plan({ strips: [lid(103.5), { ...lid(103.5), part: 'X' }] }), /no part X/],
    [plan({ strips: [lid(103.5), { ...lid(103.5), unit: 2 }] }), /no unit 2/],
    [plan({ length: 1020 }), /too short for lid/],
    [plan({ strips: [lid(160)] }), /outside/],
    [plan({ strips: [lid(40), lid(103.5)] }), /outside/],
    [plan({ start: 1032 }, 1), /overlap on B1/],
    [plan({ strips: rails(1, 1) }, 2), /rail 2 is not covered/],
    [plan({ strips: rails(2, 2) }, 2), /one piece but has 2/],
    [{ blanks: good, short: [{ part: 'lid', unit: 1, missingWidth: 5 }] }, /named short but covered/],
  ] as const)('%#: names what is broken', (broken, message) => {
    expect(texts(smallProblem, broken)).toMatch(message);
  });

  it('holds thickness and species against a strip', () => {
    const thick = smallProblem.parts.map((part) => ({ ...part, thickness: 26 }));
    expect(texts({ ...smallProblem, parts: thick }, plan({}))).toMatch(/comes out/);
    const boards = smallProblem.boards.map((board) => ({ ...board, species: 'Z' }));
    expect(texts({ ...smallProblem, boards }, plan({}))).toMatch(/not of Z/);
  });

  it('takes what is cut as it is, but holds the rules against what is added beside it', () => {
    const cut = [{ board: 'B3', start: 0, length: 400, strips: [{ width: 30, part: 'lid', unit: 1 }] }];
    const asked = { ...smallProblem, cut };
    expect(planBreaches(asked, { blanks: [...good, ...cut], short: [] })).toEqual([]);
    const added = { ...cut[0], strips: [...(cut[0]?.strips ?? []), lid(100)] } as Blank;
    expect(texts(asked, { blanks: [...good, added], short: [] })).toMatch(/too short for lid/);
  });
});
