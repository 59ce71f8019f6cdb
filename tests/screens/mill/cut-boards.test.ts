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
