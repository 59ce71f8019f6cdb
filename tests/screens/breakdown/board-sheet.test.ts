import { describe, expect, test } from 'vitest';
import { letterOf } from '../../../src/core/breakdown/board-cuts.ts';
import type { Blank } from '../../../src/core/breakdown/problem-types.ts';
import { boardSheets } from '../../../src/screens/breakdown/board-sheet.ts';
import { problemFromRecords } from '../../../src/screens/breakdown/problem-from-records.ts';
import { board, part, piece, planned, shop } from './samples.ts';

const strip = (width: number, unit = 1) => ({ width, part: 'lid', unit });
const blanks: Blank[] = [
  { board: 'a', start: 953.2, length: 950, strips: [strip(60), strip(90), strip(40, 2)] },
  { board: 'a', start: 0, length: 950, strips: [strip(98.4), strip(98.4)] },
];
const asked = problemFromRecords(shop, [board('a'), board('b')], piece([part('lid', { quantity: 2 })]));
const sheets = boardSheets(asked, planned(asked, { blanks, short: [] }));

describe('the sheet of one board', () => {
  test('boards without blanks have none', () => {
    expect(sheets.map((sheet) => sheet.board.id)).toEqual(['a']);
  });

  test('letters run along the board, whatever the order in the plan', () => {
    expect([letterOf({ blanks }, 0), letterOf({ blanks }, 1)]).toEqual(['B', 'A']);
    expect(sheets[0]?.blanks.map(({ letter, at }) => [letter, at])).toEqual([
      ['A', 1],
      ['B', 0],
    ]);
  });

  test('every crosscut is measured from the chalked end', () => {
    // By hand, kerf 3.2: 950, then 950 + 3.2 + 950; left of 2400: 2400 - 1903.2 - 3.2.
    expect(sheets[0]?.crosscuts.map(({ at }) => at)).toEqual([950, 1903.2]);
    expect(sheets[0]?.leftover).toBeCloseTo(493.6, 9);
  });

  test('strips stand in the order of their rips, and keep their place in the blank', () => {
    const second = sheets[0]?.blanks[1];
    expect(second?.strips.map(({ at, strip: { width } }) => [at, width])).toEqual([
      [1, 90],
      [0, 60],
      [2, 40],
    ]);
    expect(second?.rips.map((rip) => rip.quantities[0]?.value)).toEqual([90, 60, 40]);
  });

  test('once a blank is off, the rest is measured from the end that it left', () => {
    // The blank at 0 was cut under the plan before, with one strip; another is ripped beside it now.
    const [later, wide] = blanks as [Blank, Blank];
    const cut = [{ ...wide, strips: [strip(98.4)] }];
    const first = { ...wide, strips: [strip(98.4), strip(60)] };
    const [sheet] = boardSheets({ ...asked, cut }, planned({ ...asked, cut }, { blanks: [later, first], short: [] }));
    // By hand: 1903.2 lies 950 beyond the fresh end at 950 + 3.2.
    expect(sheet?.crosscuts.map(({ place, at }) => [place, Number(at.toFixed(9))])).toEqual([[1903.2, 950]]);
    expect(sheet?.crosscuts[0]?.say.text).toContain('from where blanks came off');
    expect(sheet?.blanks[0]?.rips.map((rip) => rip.quantities[0]?.value)).toEqual([60]);
  });
});
