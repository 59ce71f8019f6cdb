import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { foldedPanel } from '../../../src/core/breakdown/folded-panel.ts';

const sections = [
  { name: 'left', length: 450 },
  { name: 'top', length: 1000 },
  { name: 'right', length: 450 },
];
const square = { degrees: 90, trim: 0 };

describe('foldedPanel', () => {
  it('lays parts along the grain with what each mitre takes', () => {
    const folded = foldedPanel({ sections, corners: [square, square] }, 3);
    if (isProblem(folded)) throw new Error(folded.message.text);
    // Geometry: a kerf of 3 tilted 45 degrees covers 3 x sqrt(2) of the face. To the hundredth of a micrometre: doubles.
    const mitre = 3 * Math.SQRT2;
    expect(folded.length).toBeCloseTo(1900 + 2 * mitre, 5);
    expect(folded.layout[1]?.from).toBeCloseTo(450 + mitre, 5);
    expect(folded.layout[2]?.to).toBeCloseTo(folded.length, 5);
    expect(folded.cuts.map(({ bevel }) => bevel)).toEqual([45, 45]);
    expect(folded.cuts[0]?.at).toBe(450);
  });

  it('takes the plain kerf and the trim where parts stay in line', () => {
    const folded = foldedPanel({ sections: sections.slice(1), corners: [{ degrees: 180, trim: 2 }] }, 3);
    expect(folded).toMatchObject({ length: 1455, cuts: [{ bevel: 0, takes: { value: 5 } }] });
  });

  it.each([
    ['sections', sections.slice(0, 1), [], 3],
    ['sections', sections, [square], 3],
    ['kerf', sections, [square, square], Number.NaN],
    ['sections.1.length', sections.slice(1).with(1, { name: 'top', length: -1 }), [square], 3],
    ['corners.1.degrees', sections, [square, { degrees: 20, trim: 0 }], 3],
    ['corners.0.trim', sections, [{ degrees: 90, trim: -1 }, square], 3],
  ])('refuses a bad %s', (field, some, corners, kerf) => {
    expect(foldedPanel({ sections: some, corners }, kerf)).toMatchObject({ kind: 'problem', field });
  });
});
