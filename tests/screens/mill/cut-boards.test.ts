import { describe, expect, test } from 'vitest';
import { cutBoards } from '../../../src/screens/mill/cut-boards.ts';
import { board, plan, rack, sequence, shop } from './records.ts';

const { input } = sequence(plan('one'));

describe('the rack after the crosscuts', () => {
  test('the boards of the plan are cut, others stay whole', () => {
    expect(cutBoards(input, rack).cut.map(({ id }) => id)).toEqual(['a1', 'a2']);
  });

  test('what is left of them comes back with marks of its own, and knows its board', () => {
    const taken = [...rack, board('x', { chalk: 'A1-1' })];
    const { offcuts } = cutBoards(input, taken);
    const { kerf } = shop.machines.mitreSaw;
    // by hand: 2400 - (953.2 + 950) and 2400 - (853.2 + 850), less the kerf of the last cut
    expect(offcuts.map(({ chalk, parentId, width, length, state }) => [chalk, parentId, width, length, state])).toEqual(
      [
        ['A1-2', 'a1', 180, expect.closeTo(496.8 - kerf, 6), 'rack'],
        ['A2-1', 'a2', 180, expect.closeTo(696.8 - kerf, 6), 'rack'],
      ],
    );
  });

  test('the end of a board keeps its taper and its marks, measured anew from the cut', () => {
    const knot = { start: 2200, length: 100, offset: 20, width: 40, kind: 'knot' };
    const split = { start: 1850, length: 400, offset: 0, width: 12, kind: 'split' };
    const gone = { start: 100, length: 60, offset: 0, width: 30, kind: 'knot' };
    const tapered = rack.map((one) =>
      one.id === 'a1' ? { ...one, farWidth: 132, defects: [gone, split, knot] } : one,
    );
    const [end] = cutBoards(input, tapered).offcuts;
    const start = 1903.2 + shop.machines.mitreSaw.kerf;
    // by hand: 180 - 48 x 1903.2 / 2400 and a little for the kerf
    expect(end).toMatchObject({ width: expect.closeTo(180 - (48 * start) / 2400, 6), farWidth: 132 });
    expect(end?.defects).toEqual([
      { ...split, start: 0, length: expect.closeTo(2250 - start, 6) },
      { ...knot, start: expect.closeTo(2200 - start, 6) },
    ]);
  });

  test('a straight board without marks gives a straight offcut without any', () => {
    const [end] = cutBoards(input, rack).offcuts;
    expect([end?.farWidth, end?.defects]).toEqual([undefined, undefined]);
  });

  test('several from one board get a mark each', () => {
    const wide = { ...input, boards: input.boards.map((one) => ({ ...one, width: 260 })) };
    const marks = cutBoards(wide, rack).offcuts.map(({ chalk }) => chalk);
    // Beside each of its two blanks, and its end.
    expect(marks.filter((mark) => mark.startsWith('A1-'))).toEqual(['A1-1', 'A1-2', 'A1-3']);
  });

  test('done once, there is nothing left to do', () => {
    const cut = rack.map((one) => ({ ...one, state: 'cut' as const }));
    expect(cutBoards(input, cut)).toEqual({ cut: [], offcuts: [] });
  });
});
