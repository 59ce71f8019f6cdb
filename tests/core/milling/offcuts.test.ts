import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layBlanks } from '../../../src/core/milling/lay-blanks.ts';
import { offcuts } from '../../../src/core/milling/offcuts.ts';
import { blank, board, millingInput, part, scenarios } from './shops-and-stacks.ts';

const rails = (boardWidth: number, ...starts: number[]) =>
  millingInput(
    {
      boards: [board('B1', { width: boardWidth })],
      parts: [part('rail', 950, 56, 20, { quantity: 4 })],
      blanks: starts.map((start, n) => blank('B1', start, 1000, [60, 'rail', 2 * n + 1], [60, 'rail', 2 * n + 2])),
    },
    { ripKerf: 3, crosscutKerf: 3 },
  );

describe('what goes back into the rack', () => {
  it('the end of the board, and what is wide enough beside the strips', () => {
    // by hand: 2400 - 1000 - 3; 200 - 2 x (60 + 3)
    expect(offcuts(rails(200, 0))).toEqual([
      { board: 'B1', length: 1000, width: 74 },
      { board: 'B1', length: 1397, width: 200, start: 1003 },
    ]);
  });

  it('no splinter beside the strips, and the end only once', () => {
    // by hand: 170 - 126 is under 50; 2400 - 2003 - 3
    expect(offcuts(rails(170, 0, 1003))).toEqual([{ board: 'B1', length: 394, width: 170, start: 2006 }]);
  });

  it('beside the strips no more than what is clear there', () => {
    const input = rails(200, 0);
    const clear = [{ start: 0, length: 1200, offset: 8, width: 185 }];
    const boards = input.boards.map((one) => ({ ...one, clear }));
    // by hand: 185 - 2 x (60 + 3) is 59, of 1000 mm; with 8 mm less it would be under 50
    expect(offcuts({ ...input, boards })[0]).toEqual({ board: 'B1', length: 1000, width: 59 });
    const narrow = boards.map((one) => ({ ...one, clear: [{ ...clear[0], width: 175 }] as typeof clear }));
    expect(offcuts({ ...input, boards: narrow })).toHaveLength(1);
  });

  it('no board that the plan leaves alone', () => {
    expect(offcuts({ ...rails(200, 0), blanks: [] })).toEqual([]);
  });

  it('never more wood than the board has beyond its blanks', () => {
    fc.assert(
      fc.property(fc.constantFrom(...Object.values(scenarios)), (input) => {
        for (const { id, width, length } of input.boards) {
          const area = (list: readonly { length: number; width: number }[]) =>
            list.reduce((sum, one) => sum + one.length * one.width, 0);
          const strips = layBlanks(input)
            .filter((one) => one.board.id === id)
            .flatMap((one) => one.strips.map((strip) => ({ length: one.length, width: strip.width })));
          const back = offcuts(input).filter((one) => one.board === id);
          expect(area(back) + area(strips)).toBeLessThanOrEqual(width * length);
        }
      }),
    );
  });
});
