import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { subPanels } from '../../../src/core/milling/sub-panels.ts';

/** Fewest groups of neighbours that fit, by trying every way to cut the row. */
function fewest(widths: readonly number[], most: number): number {
  if (widths.length === 0) return 0;
  let best = Number.MAX_VALUE;
  for (let count = 1; count <= widths.length; count++) {
    const width = widths.slice(0, count).reduce((sum, strip) => sum + strip, 0);
    if (count === 1 || width <= most) best = Math.min(best, 1 + fewest(widths.slice(count), most));
  }
  return best;
}

describe('sub-panels', () => {
  it('five strips of 100 in a planer of 254 are 2, 2 and 1', () => {
    expect(subPanels([100, 100, 100, 100, 100], 254)).toEqual([[0, 1], [2, 3], [4]]);
  });

  it('are one without a planer, and none without strips', () => {
    expect(subPanels([100, 100, 100], null)).toEqual([[0, 1, 2]]);
    expect(subPanels([], 254)).toEqual([]);
  });

  it('keep the order, fit the planer, and are as few as can be', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 20, max: 300 }), { maxLength: 9 }), (widths) => {
        const groups = subPanels(widths, 330);
        expect(groups.flat()).toEqual(widths.map((_, index) => index));
        for (const group of groups) {
          expect(group.reduce((sum, index) => sum + (widths[index] ?? 0), 0)).toBeLessThanOrEqual(330);
        }
        expect(groups.length).toBe(fewest(widths, 330));
      }),
    );
  });
});
