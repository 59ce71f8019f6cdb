import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { bundleTally } from '../../../src/core/lumber/bundle-tally.ts';
import { outside } from '../../setup/outside.ts';
import { board } from './boards.ts';

describe('bundleTally', () => {
  it('tallies whole inches and feet', () => {
    const found = bundleTally([board(4, 5.25, 8.5)]);
    outside({
      what: '5 1/4 in by 8 1/2 ft in a bundle: whole inches, whole feet',
      source: 'ahec',
      at: 'bundle tally',
      expected: [5, 8],
      got: isProblem(found) ? found : found.boards.flatMap(({ widthInches, lengthFeet }) => [widthInches, lengthFeet]),
    });
  });

  it('rounds halves of an inch up and down in turn', () => {
    const found = bundleTally([board(4, 5.5, 8), board(4, 6.25, 8), board(4, 7.5, 10), board(4, 8.5, 8)]);
    outside({
      what: '5 1/2, 6 1/4, 7 1/2 and 8 1/2 in in a bundle: whole inches',
      source: 'ahec',
      at: 'bundle tally, halves in turn',
      expected: [6, 6, 7, 9],
      got: isProblem(found) ? found : found.boards.map(({ widthInches }) => widthInches),
    });
    expect(found).toMatchObject({
      rows: [
        { lengthFeet: 8, pieces: 3, inches: 21 },
        { lengthFeet: 10, pieces: 1, inches: 7 },
      ],
      // 21 × 8 / 12 + 7 × 10 / 12 = 14 + 5.83, to the nearest whole.
      surfaceMeasure: 20,
      boardFeet: { value: 20 },
    });
  });

  it('multiplies by the thickness', () => {
    expect(bundleTally([board(8, 6, 8), board(8, 6, 8)])).toMatchObject({ boardFeet: { value: 16 } });
  });

  it('is 0 for nothing, and refuses two thicknesses and bad boards', () => {
    expect(bundleTally([])).toMatchObject({ rows: [], boardFeet: { value: 0 } });
    expect(bundleTally([board(4, 6, 8), board(8, 6, 8)])).toMatchObject({ field: 'boards.1.thickness' });
    expect(bundleTally([board(4, 6, 8), board(4, 6, 90)])).toMatchObject({ field: 'boards.1.length' });
  });
});
