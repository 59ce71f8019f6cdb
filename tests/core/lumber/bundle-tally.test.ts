import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import type { Board } from '../../../src/core/lumber/board.ts';
import { bundleTally } from '../../../src/core/lumber/bundle-tally.ts';
import { outside } from '../../setup/outside.ts';
import { board } from './boards.ts';

/** Of each length the pieces, the sum of their whole inches, and the whole feet. */
const rows = (boards: readonly Board[]) => {
  const found = bundleTally(boards);
  if (isProblem(found)) throw new Error(found.message.text);
  return found.working.steps.slice(0, -2).map(({ by }) => Object.values(by.quantities).map(({ value }) => value));
};

const inches = (boards: readonly Board[]) => rows(boards).reduce((sum, [, whole = 0]) => sum + whole, 0);

describe('bundleTally', () => {
  it('tallies whole inches and feet', () => {
    outside({
      what: '5 1/4 in by 8 1/2 ft in a bundle: whole inches, whole feet',
      source: 'ahec',
      at: 'bundle tally',
      expected: [5, 8],
      got: rows([board(4, 5.25, 8.5)])[0]?.slice(1),
    });
  });

  it('rounds halves of an inch up and down in turn', () => {
    const boards = [board(4, 5.5, 8), board(4, 6.25, 8), board(4, 7.5, 10), board(4, 8.5, 8)];
    outside({
      what: '5 1/2, 6 1/4, 7 1/2 and 8 1/2 in in a bundle: whole inches, one after the other',
      source: 'ahec',
      at: 'bundle tally, halves in turn',
      expected: [6, 6, 7, 9],
      got: boards.map((_, n) => inches(boards.slice(0, n + 1)) - inches(boards.slice(0, n))),
    });
    expect(rows(boards)).toEqual([
      [3, 21, 8],
      [1, 7, 10],
    ]);
    // 21 × 8 / 12 + 7 × 10 / 12 = 14 + 5.83, to the nearest whole.
    expect(bundleTally(boards)).toMatchObject({ value: 20 });
  });

  it('multiplies by the thickness', () => {
    expect(bundleTally([board(8, 6, 8), board(8, 6, 8)])).toMatchObject({ value: 16 });
  });

  it('is 0 for nothing, and refuses two thicknesses and bad boards', () => {
    expect(bundleTally([])).toMatchObject({ value: 0 });
    expect(bundleTally([board(4, 6, 8), board(8, 6, 8)])).toMatchObject({ field: 'boards.1.thickness' });
    expect(bundleTally([board(4, 6, 8), board(4, 6, 90)])).toMatchObject({ field: 'boards.1.length' });
  });
});
