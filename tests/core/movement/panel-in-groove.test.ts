import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { panelInGroove } from '../../../src/core/movement/panel-in-groove.ts';
import { partMovement } from '../../../src/core/movement/part-movement.ts';
import { answered, cherry, seasons } from './woods.ts';

const frame = { wood: cherry, seasons, opening: 300, depth: 10 };

describe('panelInGroove', () => {
  it('leaves the spare room in the dampest season', () => {
    const { value } = answered(panelInGroove(frame));
    expect(value.gapWet).toBeCloseTo(0.5, 9);
    // By hand: 319 / (1 + 3 x 0.00248) = 316.644, half of what 320 leaves.
    expect(value.width).toBeCloseTo(316.644, 3);
    expect(value.gapToday).toBeCloseTo(1.678, 3);
  });

  it('agrees with the movement of the panel it cuts, whatever the seasons', () => {
    const moisture = fc.double({ min: 4, max: 16, noNaN: true });
    fc.assert(
      fc.property(moisture, moisture, moisture, (today, a, b) => {
        const year = { today, dry: Math.min(a, b), wet: Math.max(a, b) };
        const { value } = answered(panelInGroove({ ...frame, seasons: year, depth: 20 }));
        const moved = answered(partMovement(cherry, value.width, year)).value;
        expect(value.gapDry).toBeCloseTo((340 - value.width - moved.dryChange) / 2, 9);
        expect(value.gapWet).toBeCloseTo((340 - value.width - moved.wetChange) / 2, 9);
        expect(Math.min(value.gapToday, value.gapDry, value.gapWet)).toBeGreaterThan(0.5 - 1e-9);
        expect(value.heldDry).toBeGreaterThanOrEqual(3);
      }),
    );
  });

  it('refuses a groove too shallow to hold the panel when dry', () => {
    expect(panelInGroove({ ...frame, depth: 4 })).toMatchObject({ kind: 'problem', field: 'depth' });
    expect(panelInGroove({ ...frame, depth: 6 })).not.toHaveProperty('field');
  });

  it.each([
    ['opening', { opening: -1 }],
    ['opening', { opening: 1e6 }],
    ['depth', { depth: Number.NaN }],
    ['seasons.wet', { seasons: { ...seasons, wet: 40 } }],
  ])('names %s', (field, wrong) => {
    expect(panelInGroove({ ...frame, ...wrong })).toMatchObject({ kind: 'problem', field });
  });
});
