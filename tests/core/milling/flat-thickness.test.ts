import { describe, expect, it } from 'vitest';
import { phrasePieces } from '../../../src/core/answer/phrase.ts';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { flatThickness } from '../../../src/core/milling/flat-thickness.ts';

const board = { thickness: 28, width: 250, length: 2400, cup: 2.5, bow: 6 };
const plan = { blankLength: 1000, rips: 2, faceAllowance: 1 };

describe('thickness once flat', () => {
  it('shows every step to the result, with every quantity in it', () => {
    const left = flatThickness(board, plan);
    if (isProblem(left)) throw new Error(left.field);
    // by hand: 250 / 2; 2.5 / 4; 6 x (1000 / 2400)^2; no twist; the rest. Four decimals: far under what is measured
    const gives = left.working.steps.map((step) => step.gives.value);
    for (const [index, value] of [125, 0.625, 1.0417, 0, 24.3333].entries()) expect(gives[index]).toBeCloseTo(value, 4);
    for (const { by } of left.working.steps) {
      for (const piece of phrasePieces(by)) if (typeof piece === 'string') expect(piece).not.toContain('{');
    }
  });

  const wrong: [string, object, object, string][] = [
    ['no thickness', { thickness: 0 }, {}, 'thickness'],
    ['a width that is no number', { width: Number.NaN }, {}, 'width'],
    ['a board of 90 ft', { length: 27432 }, {}, 'length'],
    ['a cup below zero', { cup: -1 }, {}, 'cup'],
    ['a cup deeper than a board can have', { cup: 60 }, {}, 'cup'],
    ['a twist below zero', { twist: -1 }, {}, 'twist'],
    ['a blank longer than its board', {}, { blankLength: 2500 }, 'blankLength'],
    ['a blank of no length', {}, { blankLength: 0 }, 'blankLength'],
    ['one strip and a half', {}, { rips: 1.5 }, 'rips'],
    ['no strips', {}, { rips: 0 }, 'rips'],
    ['faces that take all', {}, { faceAllowance: 15 }, 'faceAllowance'],
  ];
  for (const [name, b, p, field] of wrong) {
    it(`refuses ${name}`, () =>
      expect(flatThickness({ ...board, ...b }, { ...plan, ...p })).toMatchObject({ kind: 'problem', field }));
  }
});
