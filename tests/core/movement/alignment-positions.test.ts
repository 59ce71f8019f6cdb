import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { alignmentPositions } from '../../../src/core/movement/alignment-positions.ts';
import { answered } from './woods.ts';

const seam = { length: 600, width: 40 };
const positions = (input: Parameters<typeof alignmentPositions>[0]) =>
  answered(alignmentPositions(input)).value.map((at) => Math.round(at * 10) / 10);

describe('alignmentPositions', () => {
  it('spreads them evenly from one end', () => {
    expect(positions(seam)).toEqual([35, 211.7, 388.3, 565]);
  });

  it('keeps clear of a later crosscut, and aligns both pieces', () => {
    expect(positions({ ...seam, crosscuts: [300] })).toEqual([35, 150, 265, 335, 450, 565]);
    expect(positions({ ...seam, crosscuts: [300, 300] })).toEqual(positions({ ...seam, crosscuts: [300] }));
  });

  it('keeps clear of bevels, and passes over crosscuts that fall into them', () => {
    expect(positions({ ...seam, start: 20, end: 30 })).toEqual([55, 215, 375, 535]);
    expect(positions({ ...seam, start: 20, end: 30, crosscuts: [10] })).toEqual([55, 215, 375, 535]);
  });

  it('keeps clear of what a later bevelled cut takes to each side', () => {
    const found = positions({ ...seam, crosscuts: [300], reach: 20 });
    expect(found).toEqual([35, 140, 245, 355, 460, 565]);
    // One that falls into a bevel, but reaches beyond it.
    expect(positions({ ...seam, start: 20, crosscuts: [15], reach: 30 })[0]).toBe(45 + 35);
  });

  it("sets one in the middle where two don't fit, and none in a stretch that is too short", () => {
    expect(positions({ length: 100, width: 40 })).toEqual([50]);
    expect(positions({ ...seam, crosscuts: [50] })[0]).toBe(85);
  });

  it('is clear of ends, cuts and each other, whatever the seam', () => {
    const input = fc.record({
      length: fc.double({ min: 80, max: 3000, noNaN: true }),
      width: fc.double({ min: 5, max: 60, noNaN: true }),
      clear: fc.double({ min: 0, max: 30, noNaN: true }),
      reach: fc.double({ min: 0, max: 40, noNaN: true }),
      shares: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 4 }),
    });
    fc.assert(
      fc.property(input, ({ length, width, clear, reach, shares }) => {
        const crosscuts = shares.map((share) => share * length);
        const answer = alignmentPositions({ length, width, clear, reach, crosscuts });
        if (isProblem(answer)) return;
        const found = answer.value;
        for (const at of found) {
          for (const end of [0, length]) expect(Math.abs(at - end)).toBeGreaterThanOrEqual(width / 2 + clear - 1e-6);
          for (const cut of crosscuts)
            expect(Math.abs(at - cut)).toBeGreaterThanOrEqual(reach + width / 2 + clear - 1e-6);
        }
        for (const [index, at] of found.slice(1).entries())
          expect(at - (found[index] ?? 0)).toBeGreaterThanOrEqual(width + clear - 1e-6);
      }),
    );
  });

  it.each([
    ['length', { length: 0 }],
    ['length', { length: 60 }],
    ['width', { width: -1 }],
    ['start', { start: -1 }],
    ['end', { end: Number.NaN }],
    ['length', { start: 400, end: 400 }],
    ['reach', { crosscuts: [300], reach: -1 }],
    ['clear', { clear: -1 }],
    ['spacing', { spacing: 0 }],
    ['crosscuts.1', { crosscuts: [300, 700] }],
  ])('names %s', (field, wrong) => {
    expect(alignmentPositions({ ...seam, ...wrong })).toMatchObject({ kind: 'problem', field });
  });
});
