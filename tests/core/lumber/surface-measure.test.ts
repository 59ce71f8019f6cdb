import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem, type Outcome } from '../../../src/core/answer/problem.ts';
import { surfaceMeasure } from '../../../src/core/lumber/surface-measure.ts';
import { outside } from '../../setup/outside.ts';
import { anyBoard, board } from './boards.ts';

function sure<T>(outcome: Outcome<T>): T {
  if (isProblem(outcome)) throw new Error(outcome.message.text);
  return outcome;
}

describe('surfaceMeasure', () => {
  it.each([
    ['ahec', 'measurement', '6 1/4 in by 8 ft', 6.25, 8, 4],
    // As restated in public trade guides.
    ['nhla', 'surface measure', '6 1/2 in by 8 ft', 6.5, 8, 4],
    ['nhla', 'surface measure', '8 in by 12 ft', 8, 12, 8],
    ['nhla', 'surface measure', '10 in by 13 ft', 10, 13, 11],
    ['nhla', 'whole feet', '12 in by 8 ft 11 in', 12, 8 + 11 / 12, 8],
  ] as const)('%s, %s: %s', (source, at, size, inches, feet, expected) => {
    const got = sure(surfaceMeasure(board(4, inches, feet))).value;
    outside({ what: `surface measure of ${size}, sq ft`, source, at, expected, got });
  });

  it('sends exact halves up and down in turn', () => {
    const half = board(4, 6.5, 12);
    expect(surfaceMeasure(half, 'up')).toMatchObject({ value: 7, halfGoes: 'down' });
    expect(surfaceMeasure(half, 'down')).toMatchObject({ value: 6, halfGoes: 'up' });
    expect(surfaceMeasure(board(4, 8, 12), 'down')).toMatchObject({ value: 8, halfGoes: 'down' });
  });

  it('loses no foot and no half to millimetres that were rounded', () => {
    expect(surfaceMeasure({ ...board(4, 12, 8), length: 2438 })).toMatchObject({ value: 8 });
    expect(surfaceMeasure({ ...board(4, 12, 8), length: 2437 })).toMatchObject({ value: 7 });
    // 9 3/8 in by 16 ft is 12.5; 238.125 mm kept as 238.1.
    expect(surfaceMeasure({ ...board(4, 9.375, 16), width: 238.1 })).toMatchObject({ value: 13, halfGoes: 'down' });
  });

  it('measures a taper a third of the length from the narrow end', () => {
    // 9 and 12 in at the ends count as 10 in, whichever way round.
    const taper = { ...board(4, 9, 12), farWidth: 12 * 25.4 };
    outside({
      what: 'surface measure of a taper of 9 to 12 in by 12 ft, sq ft',
      source: 'nhla-memory',
      at: 'a third of the length from the narrow end',
      expected: 10,
      got: sure(surfaceMeasure(taper)).value,
    });
    expect(surfaceMeasure({ ...taper, width: 12 * 25.4, farWidth: 9 * 25.4 })).toMatchObject({ value: 10 });
  });

  it('is within half a square foot of the exact one, from whole numbers alone', () => {
    fc.assert(
      fc.property(anyBoard, (any) => {
        // 1/16 in × whole feet, counted in 192nds of a square foot: no binary fractions in the expectation.
        const sixteenths = Math.round((any.width / 25.4) * 16);
        const feet = Math.floor(Math.round(any.length / 25.4) / 12);
        const found = surfaceMeasure(any);
        if (isProblem(found)) throw new Error(found.message.text);
        const offBy192nds = Math.abs(found.value * 192 - sixteenths * feet);
        expect(offBy192nds).toBeLessThanOrEqual(96);
        expect(found.halfGoes).toBe(offBy192nds === 96 ? 'down' : 'up');
      }),
    );
  });

  it('shows its working and refuses what is no board', () => {
    const found = surfaceMeasure(board(4, 6.25, 8));
    if (isProblem(found)) throw new Error(found.message.text);
    expect(found.working.steps.map((step) => step.gives.value)).toEqual([(6.25 * 8) / 12, 4]);
    expect(found.working.sources).toEqual(['nhla']);
    expect(surfaceMeasure(board(4, 6, 90))).toMatchObject({ kind: 'problem', field: 'length' });
  });
});
