import fc from 'fast-check';
import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { phrase } from '../../../src/core/answer/phrase.ts';
import { isProblem, type Outcome } from '../../../src/core/answer/problem.ts';
import { count } from '../../../src/core/answer/quantity.ts';
import { m3PerBoardFoot } from '../../../src/core/answer/us-units.ts';
import type { Board } from '../../../src/core/lumber/board.ts';
import { boardFeetByRule } from '../../../src/core/lumber/board-feet.ts';
import { exactVolume } from '../../../src/core/lumber/exact-volume.ts';
import { tally } from '../../../src/core/lumber/tally.ts';
import { outside } from '../../setup/outside.ts';
import { anyBoard, board } from './boards.ts';

function sure<T>(outcome: Outcome<T>): T {
  if (isProblem(outcome)) throw new Error(outcome.message.text);
  return outcome;
}

const surfaceMeasureOf = (boards: readonly Board[]) =>
  tally(boards).boards.reduce((sum, each) => sum + each.surfaceMeasure, 0);

describe('boardFeetByRule', () => {
  it('agrees with the worked example of the guide', () => {
    const found = sure(boardFeetByRule(board(8, 6.25, 8)));
    expect(found.working.steps.map(({ finds }) => finds)).toEqual([
      'square feet of face',
      'surface measure',
      'board feet',
    ]);
    expect(found.working.steps[1]?.gives).toEqual(count(4));
    const what = '2 in by 6 1/4 in by 8 ft: board feet';
    outside({ what, source: 'ahec', at: 'measurement', expected: 8, got: found.value });
  });
  it('counts less than 1 in as 1 in, and a measured board as the quarters it is full of', () => {
    const got = sure(boardFeetByRule(board(3, 12, 8))).value;
    outside({
      what: '3/4 by 12 in by 8 ft: board feet',
      source: 'nhla',
      at: 'less than 1 in counts as 1 in',
      expected: 8,
      got,
    });
    expect(boardFeetByRule({ ...board(4, 12, 8), thickness: { mm: 20 } })).toMatchObject({ value: 8 });
    expect(boardFeetByRule({ ...board(4, 12, 8), thickness: { mm: 27.4 } })).toMatchObject({ value: 8 });
    expect(boardFeetByRule({ ...board(4, 12, 8), thickness: { mm: 31.5 } })).toMatchObject({ value: 10 });
  });
});

describe('exactVolume', () => {
  it('knows the board foot', () => {
    const board = { what: '1 board foot, m3', got: m3PerBoardFoot };
    // Both give seven digits.
    outside({ ...board, source: 'nist-sp811', at: 'appendix B', expected: 2.359737e-3, tolerance: 5e-10 });
    const expected = 144 * unit('1 cuin').toNumber('m^3');
    outside({ ...board, source: 'mathjs', at: '144 cuin', expected, tolerance: 5e-9 });
  });
  it('takes the mean of both ends of a taper, and a measured thickness as it is', () => {
    const taper = { thickness: { mm: 27.4 }, width: 180, farWidth: 220, length: 2000 };
    expect(sure(exactVolume(taper)).cubicMetres.value).toBeCloseTo(0.0274 * 0.2 * 2, 12); // binary noise only
  });
});

describe('tally', () => {
  it('gives each board and the sums', () => {
    const found = tally([board(8, 6.25, 8), board(4, 6.5, 12), board(4, 6.5, 12)]);
    expect(found.boards.map((each) => each.surfaceMeasure)).toEqual([4, 7, 6]);
    expect(found.boardFeet.value).toBe(8 + 7 + 6);
    expect(found.exactBoardFeet.value).toBeCloseTo(8 + 1 / 3 + 13, 9); // 144 cubic inches each; binary noise only
    expect(found.cubicMetres.value).toBeCloseTo((8 + 1 / 3 + 13) * 2.359737e-3, 7);
  });

  it('says of each board what its own working finds', () => {
    fc.assert(
      fc.property(fc.array(anyBoard, { maxLength: 40 }), (boards) => {
        for (const { board, halfGoes, surfaceMeasure, boardFeet, cubicMetres } of tally(boards).boards) {
          const found = sure(boardFeetByRule(board, halfGoes));
          expect(found.value).toBe(boardFeet);
          expect(found.working.steps[1]?.gives).toEqual(count(surfaceMeasure));
          expect(exactVolume(board)).toMatchObject({ cubicMetres: { value: cubicMetres } });
        }
      }),
    );
  });

  it('sends exact halves up and down in turn', () => {
    const boards = Array.from({ length: 1200 }, () => board(4, 6, 9));
    outside({
      what: '1200 boards of 6 in by 9 ft, each an exact half at 4.5 sq ft: board feet',
      source: 'nhla-memory',
      at: 'halves go up and down in turn',
      expected: 1200 * 4.5,
      got: tally(boards).boardFeet.value,
    });
    expect(surfaceMeasureOf(boards.slice(0, 3))).toBe(5 + 4 + 5);
  });

  it('is 0 for no boards; a board without a size is left out, and not counted', () => {
    expect(tally([])).toMatchObject({ boardFeet: { value: 0 }, cubicMetres: { value: 0 } });
    const { boards, boardFeet } = tally([board(4, Number.NaN, 8), board(4, 0, 8), board(8, 6.25, 8)]);
    expect(boards.length).toBe(1);
    expect(boardFeet.value).toBe(8);
    expect(boardFeet.working.steps[0]?.by).toEqual(phrase`${count(1)} boards added up`);
  });

  it('strays from whole-foot measure by half a foot a board at most, and not at all on average over halves', () => {
    fc.assert(
      fc.property(fc.array(anyBoard, { maxLength: 40 }), (boards) => {
        const wholeFeet = boards.map((each) => ({ ...each, length: Math.floor(each.length / 304.8 + 1e-9) * 304.8 }));
        const faces = wholeFeet.map((each) => (each.width * each.length) / 304.8 ** 2);
        const sum = faces.reduce((total, face) => total + face, 0);
        // 1e-9: binary noise of some sums.
        expect(Math.abs(surfaceMeasureOf(boards) - sum)).toBeLessThanOrEqual(boards.length / 2 + 1e-9);
      }),
    );
    const halves = Array.from({ length: 30 }, () => board(4, 6.5, 12));
    expect(surfaceMeasureOf(halves)).toBe(30 * 6.5);
  });
});
