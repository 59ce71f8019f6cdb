import { describe, expect, it } from 'vitest';
import { figure } from '../../src/figure/tally.ts';
import { outside } from '../setup/outside.ts';

describe('figure tally', () => {
  it('answers the worked example of the guide', () => {
    const answer = figure({ boards: [{ quarters: 8, width: 158.75, length: 2438.4 }] });
    const { surfaceMeasure, boardFeet, exactBoardFeet, cubicMetres } = answer as {
      surfaceMeasure: number[];
      boardFeet: number;
      exactBoardFeet: number;
      cubicMetres: number;
    };
    outside({
      what: 'figure: 2 in by 6 1/4 in by 8 ft: surface measure, board feet',
      source: 'ahec',
      at: 'measurement',
      expected: [4, 8],
      got: [...surfaceMeasure, boardFeet],
    });
    expect(exactBoardFeet).toBeCloseTo(100 / 12, 9); // 2 × 6 1/4 × 96 / 144; binary noise only
    // Seven digits.
    outside({
      what: 'figure: 2 in by 6 1/4 in by 8 ft: m3',
      source: 'nist-sp811',
      at: 'appendix B',
      expected: (100 / 12) * 2.359737e-3,
      got: cubicMetres,
      tolerance: 5e-9,
    });
  });
  it('takes a measured thickness and a taper', () => {
    expect(figure({ boards: [{ thickness: 27.4, width: 228.6, farWidth: 304.8, length: 3657.6 }] })).toMatchObject({
      surfaceMeasure: [10],
      boardFeet: 10,
    });
  });
  it.each([
    [{}, 'boards'],
    [{ boards: {} }, 'boards'],
    [{ boards: [null] }, 'boards.0'],
    [{ boards: [{ quarters: 4, length: 2400 }] }, 'boards.0.width'],
    [{ boards: [{ quarters: 4, width: '200', length: 2400 }] }, 'boards.0.width'],
    [{ boards: [{ quarters: 4, width: 200 }] }, 'boards.0.length'],
    [{ boards: [{ quarters: 4, width: 200, farWidth: null, length: 2400 }] }, 'boards.0.farWidth'],
    [{ boards: [{ width: 200, length: 2400 }] }, 'boards.0.quarters'],
    [{ boards: [{ quarters: '4', width: 200, length: 2400 }] }, 'boards.0.quarters'],
    [{ boards: [{ quarters: 4, thickness: 25, width: 200, length: 2400 }] }, 'boards.0.quarters'],
    [{ boards: [{ quarters: 4, width: -200, length: 2400 }] }, 'boards.0.width'],
    [{ boards: [{ quarters: 4, width: 200, length: 27_432 }] }, 'boards.0.length'],
  ])('names the field in %j', (input, field) => {
    expect(figure(input)).toMatchObject({ kind: 'problem', field });
  });
});
