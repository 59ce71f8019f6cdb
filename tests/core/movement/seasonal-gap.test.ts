import { describe, expect, it } from 'vitest';
import { seasonalGap } from '../../../src/core/movement/seasonal-gap.ts';
import { answered, cherry, seasons } from './woods.ts';

const drawer = { wood: cherry, seasons, opening: 150 };

describe('seasonalGap', () => {
  // By hand: 149 / (1 + 3 x 0.00248) = 147.8996; then 147.8996 x 0.00248 x 2 = 0.7336 more gap when dry.
  it('leaves the least gap when damp, and says what it is today and when dry', () => {
    const { value } = answered(seasonalGap(drawer));
    expect(value.size).toBeCloseTo(147.8996, 4);
    expect(value.gapWet).toBeCloseTo(1, 9);
    expect(value.gapToday).toBeCloseTo(2.1004, 4);
    expect(value.gapDry).toBeCloseTo(2.1004 + 0.7336, 3);
  });

  it('takes the least gap from today where the wood is damper than it will ever be', () => {
    expect(answered(seasonalGap({ ...drawer, seasons: { ...seasons, today: 13 } })).value.gapToday).toBeCloseTo(1, 9);
  });

  it.each([
    ['opening', { opening: 0 }],
    ['opening', { opening: 1e6 }],
    ['least', { least: -1 }],
    ['seasons.dry', { seasons: { ...seasons, dry: 31 } }],
  ])('names %s', (field, wrong) => {
    expect(seasonalGap({ ...drawer, ...wrong })).toMatchObject({ kind: 'problem', field });
  });
});
