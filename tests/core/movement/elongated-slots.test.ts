import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { elongatedSlots, type SlotInput } from '../../../src/core/movement/elongated-slots.ts';
import { partMovement } from '../../../src/core/movement/part-movement.ts';
import { outside } from '../../setup/outside.ts';
import { answered, cherry, seasons } from './woods.ts';

const moves = (width: number, year = seasons) => answered(partMovement(cherry, width, year));

// A chest lid, 450 mm, on a cleat with three screws.
const lid: SlotInput = {
  moves: moves(450),
  length: 450,
  positions: [25, 225, 425],
  fixed: 1,
  shank: 5,
  head: 10,
};
const { head: _, ...headless } = lid;
const slots = (more: Partial<SlotInput> = {}) => answered(elongatedSlots({ ...lid, ...more })).value;

describe('elongatedSlots', () => {
  // 200 mm from the fixed screw: shrinks 200 x 0.00248 x 2 = 0.992, swells 200 x 0.00248 x 3 = 1.488.
  it('fits shank, movement both ways and margin', () => {
    const [outer] = slots();
    // Doubles leave only rounding.
    outside({
      what: 'slot in a cleat on black cherry, screw of 5 mm 200 mm from the fixed one, 6 to 11 %: length, mm',
      source: 'wood-handbook',
      at: 'Table 13-5',
      expected: 5 + 0.992 + 1.488 + 2,
      got: outer?.length,
      tolerance: 5e-10,
    });
    expect(outer?.towardsFixed).toBeCloseTo(2.5 + 0.992 + 1, 9);
    expect(outer?.awayFromFixed).toBeCloseTo(2.5 + 1.488 + 1, 9);
    expect(outer?.counterbore?.length).toBeCloseTo(10 + 0.992 + 1.488 + 2 + 1, 9);
    expect(outer?.counterbore?.width).toBe(11);
  });

  it('leaves the fixed one a round hole', () => {
    expect(slots()[1]).toMatchObject({ fixed: true, length: 5, shrink: 0, swell: 0, from: 222.5 });
    expect(answered(elongatedSlots(headless)).value[0]?.counterbore).toBeUndefined();
    // A tenon is wider than any head.
    expect(elongatedSlots({ ...headless, positions: [225], fixed: 0, shank: 120 })).toMatchObject({
      value: [{ length: 120 }],
    });
  });

  it('turns the ends of a slot round where the slot goes with the moving part', () => {
    const [still] = slots();
    const [moving] = slots({ inMoving: true });
    // The tenons of a breadboard end, pegs of 8 mm: 240 x 0.00248 x (2 + 3) + 8 + twice 1. Doubles leave only rounding.
    outside({
      what: 'breadboard end of black cherry, peg of 8 mm 240 mm from the fixed one, 6 to 11 %: slot, mm',
      source: 'wood-handbook',
      at: 'Table 13-5',
      expected: 12.976,
      got: slots({
        inMoving: true,
        shank: 8,
        moves: moves(600),
        length: 600,
        positions: [60, 300, 540],
      })[0]?.length,
      tolerance: 5e-10,
    });
    expect(moving?.towardsFixed).toBeCloseTo(still?.awayFromFixed ?? 0, 9);
    expect(moving?.awayFromFixed).toBeCloseTo(still?.towardsFixed ?? 0, 9);
  });

  it('grows with the distance from the fixed screw', () => {
    const lengths = slots({ positions: [20, 120, 240, 420], fixed: 0 }).map((slot) => slot.length);
    expect(lengths).toEqual(lengths.toSorted((a, b) => a - b));
    expect(new Set(lengths).size).toBe(4);
  });

  it('always lets the screw travel both ways', () => {
    const moisture = fc.double({ min: 0, max: 30, noNaN: true });
    fc.assert(
      fc.property(moisture, moisture, moisture, fc.nat(2), (today, a, b, fixed) => {
        const year = { today, dry: Math.min(a, b), wet: Math.max(a, b) };
        for (const slot of slots({ moves: moves(450, year), positions: [60, 225, 390], fixed })) {
          expect(slot.awayFromFixed - 2.5).toBeGreaterThanOrEqual(slot.swell);
          expect(slot.towardsFixed - 2.5).toBeGreaterThanOrEqual(slot.shrink);
          expect(slot.towardsFixed + slot.awayFromFixed).toBeCloseTo(slot.length, 9);
        }
      }),
    );
  });

  it('refuses a slot longer than the part is wide', () => {
    const short = { moves: moves(12), length: 12, positions: [6], fixed: 0 };
    // A head of 10 takes a counterbore of 11.
    expect(elongatedSlots({ ...lid, ...short })).not.toHaveProperty('field');
    expect(elongatedSlots({ ...lid, ...short, head: 11 })).toMatchObject({ field: 'length' });
    expect(elongatedSlots({ ...headless, ...short, shank: 12 })).toMatchObject({ field: 'length' });
  });

  // Without heads, the outer slots reach 4.49 mm towards the fixed screw, whose hole reaches 2.5 mm.
  it('refuses slots that run into one another', () => {
    expect(elongatedSlots({ ...lid, positions: [25, 225, 236] })).toMatchObject({ field: 'positions.2' });
    expect(elongatedSlots({ ...headless, positions: [25, 225, 228] })).toMatchObject({ field: 'positions.2' });
    expect(elongatedSlots({ ...lid, positions: [214, 225, 425] })).toMatchObject({ field: 'positions.1' });
    expect(elongatedSlots({ ...lid, positions: [25, 225, 245] })).not.toHaveProperty('field');
  });

  // Outer slots reach 4.49 mm towards the fixed screw and 5 mm the other way; the fixed hole 2.5 mm, in a counterbore 5.5 mm.
  it('refuses a slot that breaks out at an end', () => {
    expect(elongatedSlots({ ...headless, positions: [4, 225, 425] })).toMatchObject({ field: 'positions.0' });
    expect(elongatedSlots({ ...headless, positions: [25, 225, 446] })).toMatchObject({ field: 'positions.2' });
    expect(elongatedSlots({ ...headless, positions: [6, 225, 444] })).not.toHaveProperty('field');
    expect(elongatedSlots({ ...lid, positions: [5, 225, 425], fixed: 0 })).toMatchObject({ field: 'positions.0' });
    expect(elongatedSlots({ ...headless, positions: [3, 225, 425], fixed: 0 })).not.toHaveProperty('field');
  });

  it.each([
    ['fixed', { positions: [] }],
    ['positions.0', { positions: [-1, 225] }],
    ['positions.1', { positions: [25, 500] }],
    ['positions.1', { positions: [225, 25] }],
    ['fixed', { fixed: 3 }],
    ['fixed', { fixed: 0.5 }],
    ['shank', { shank: 0 }],
    ['head', { head: 4 }],
    ['margin', { margin: -1 }],
    ['length', { length: Number.NaN }],
    ['length', { length: -450 }],
  ])('names %s', (field, wrong) => {
    expect(elongatedSlots({ ...lid, ...wrong })).toMatchObject({ kind: 'problem', field });
  });
});
