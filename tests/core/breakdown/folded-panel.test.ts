import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { foldedPanel } from '../../../src/core/breakdown/folded-panel.ts';

const whole = { id: 'fold', species: 'A', quantity: 1, width: 400, thickness: 20 };
const parts = [
  { id: 'left', length: 450 },
  { id: 'top', length: 1000 },
  { id: 'right', length: 450 },
];
const square = { corner: 90, trim: 0 };

describe('foldedPanel', () => {
  it('lays parts along the grain with what each mitre takes', () => {
    const folded = foldedPanel(whole, parts, [square, square], 3);
    if (isProblem(folded)) throw new Error(folded.message.text);
    // Geometry: a kerf of 3 tilted 45 degrees covers 3 x sqrt(2) of the face. To the hundredth of a micrometre: doubles.
    const mitre = 3 * Math.SQRT2;
    expect(folded.part.length).toBeCloseTo(1900 + 2 * mitre, 5);
    expect(folded.layout[1]?.from).toBeCloseTo(450 + mitre, 5);
    expect(folded.layout[2]?.to).toBeCloseTo(folded.part.length, 5);
    expect(folded.cuts.map(({ bevel }) => bevel)).toEqual([45, 45]);
    expect(folded.cuts[0]?.at).toBe(450);
    expect(folded.part.panel).toBe(true);
  });

  it('takes the plain kerf and the trim where parts stay in line', () => {
    const folded = foldedPanel(whole, parts.slice(1), [{ corner: 180, trim: 2 }], 3);
    expect(folded).toMatchObject({ part: { length: 1455 }, cuts: [{ bevel: 0, takes: { value: 5 } }] });
  });

  it.each([
    ['parts', parts.slice(0, 1), [], 3],
    ['folds', parts, [square], 3],
    ['kerf', parts, [square, square], Number.NaN],
    ['parts.1.length', [parts[0], { id: 'top', length: -1 }], [square], 3],
    ['folds.1.corner', parts, [square, { corner: 20, trim: 0 }], 3],
    ['folds.0.trim', parts, [{ corner: 90, trim: -1 }, square], 3],
  ] as const)('refuses a bad %s', (field, some, folds, kerf) => {
    expect(foldedPanel(whole, some as typeof parts, folds, kerf)).toMatchObject({ kind: 'problem', field });
  });
});
