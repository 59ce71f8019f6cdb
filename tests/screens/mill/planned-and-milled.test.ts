import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { millingSequence } from '../../../src/core/milling/milling-sequence.ts';
import { problemFromRecords } from '../../../src/screens/breakdown/problem-from-records.ts';
import { millingInput } from '../../../src/screens/mill/milling-input.ts';
import { board, part, piece, planned, shop, solve } from '../breakdown/samples.ts';

const warp = (most: number) => fc.integer({ min: 0, max: most * 10 }).map((tenths) => tenths / 10);
const rack = fc.array(
  fc.record({
    width: fc.integer({ min: 120, max: 320 }),
    warp: fc.record({ cup: warp(5), bow: warp(9), twist: warp(9), crook: warp(25) }),
  }),
  { minLength: 3, maxLength: 4 },
);
const chest = piece([
  part('lid', { thickness: 19 }),
  part('rail', { panel: false, width: 90, length: 500, quantity: 3, thickness: 21 }),
]);

test('what the plan cuts, milling finds thick and straight enough: warp costs both the same', () => {
  fc.assert(
    fc.property(rack, (boards) => {
      const all = boards.map((one, at) => board(`b${at}`, one));
      const problem = problemFromRecords(shop, all, chest);
      const plan = planned(problem, solve(problem));
      if (plan.blanks.length === 0) return;
      const steps = millingSequence(millingInput(plan, chest, all, shop));
      if (isProblem(steps)) throw new Error(steps.message.text);
      const undecided = steps.filter(({ stage }) => stage === 'decide').map(({ title }) => title.text);
      expect(undecided).toEqual([]);
    }),
    { numRuns: 100, seed: 7 },
  );
});
