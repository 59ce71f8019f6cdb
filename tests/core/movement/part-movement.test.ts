import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { partMovement } from '../../../src/core/movement/part-movement.ts';
import { outside } from '../../setup/outside.ts';
import { answered, cherry, seasons, wood } from './woods.ts';

describe('partMovement', () => {
  it("moves both ways from today's size", () => {
    const { value } = answered(partMovement(cherry, 400, seasons));
    // 400 x 0.00248 x 2 and x 3. Doubles leave only rounding.
    outside({
      what: 'black cherry, flat, 400 mm at 8 %, seasons 6 to 11 %: shrinks and swells, mm',
      source: 'wood-handbook',
      at: 'Table 13-5',
      expected: [1.984, 2.976],
      got: [value.shrink, value.swell],
      tolerance: 5e-10,
    });
    expect(400 + value.dryChange).toBeCloseTo(398.016, 9);
    expect(400 + value.wetChange).toBeCloseTo(402.976, 9);
  });

  it('only shrinks where the wood is damper than it will ever be, and only swells where it is drier', () => {
    const damp = answered(partMovement(cherry, 400, { today: 13, dry: 6, wet: 11 })).value;
    expect(damp.swell).toBe(0);
    expect(damp.shrink).toBeCloseTo(400 * 0.00248 * 7, 9);
    const parched = answered(partMovement(cherry, 400, { today: 6, dry: 8, wet: 11 })).value;
    expect(parched.shrink).toBe(0);
    expect(parched.swell).toBeCloseTo(400 * 0.00248 * 5, 9);
  });

  // Green ash's two tables disagree (see dimensional-change.test.ts): from 13 %, its shrinkage to 5.9 % comes out smaller than its
  // coefficient's to 6 %. The larger of the two is what a slot must allow.
  it('takes the larger where the seasons fall to different equations', () => {
    const { shrink, dryChange, wetChange } = answered(
      partMovement(wood('ash, green'), 400, { today: 13, dry: 5.9, wet: 6 }),
    ).value;
    expect(wetChange).toBeLessThan(dryChange);
    expect(shrink).toBe(-wetChange);
  });

  it('stays still where the seasons are alike', () => {
    expect(answered(partMovement(cherry, 400, { today: 8, dry: 8, wet: 8 })).value).toMatchObject({
      shrink: 0,
      swell: 0,
    });
  });

  it('grows in proportion to the width', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 5000, noNaN: true }), (width) => {
        const single = answered(partMovement(cherry, width, seasons)).value;
        const double = answered(partMovement(cherry, 2 * width, seasons)).value;
        expect(double.swell).toBeCloseTo(2 * single.swell, 9);
      }),
    );
  });

  it('shows both seasons in its working', () => {
    const finds = answered(partMovement(cherry, 400, seasons)).working.steps.map((step) => step.finds);
    expect(finds).toContain('width, dry season');
    expect(finds).toContain('width, damp season');
  });

  it.each([
    ['seasons.today', 400, { ...seasons, today: 31 }],
    ['seasons.dry', 400, { ...seasons, dry: -1 }],
    ['seasons.wet', 400, { ...seasons, wet: Number.NaN }],
    ['seasons.wet', 400, { today: 8, dry: 11, wet: 6 }],
    ['width', -1, seasons],
  ])('names %s', (field, width, wrong) => {
    expect(partMovement(cherry, width, wrong)).toMatchObject({ kind: 'problem', field });
  });
});
