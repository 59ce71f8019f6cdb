import { describe, expect, it } from 'vitest';
import { breadboardEnd } from '../../../src/core/movement/breadboard-end.ts';
import { outside } from '../../setup/outside.ts';
import { answered, cherry, seasons } from './woods.ts';

const table = { wood: cherry, width: 600, seasons, pegs: [60, 300, 540], peg: 8, tenonWidth: 60 };

describe('breadboardEnd', () => {
  it('fixes the middle peg and slots the outer ones', () => {
    const { slots } = answered(breadboardEnd(table)).value;
    expect(slots.map((slot) => slot.fixed)).toEqual([false, true, false]);
    // 240 x 0.00248 x (2 + 3) + 8 + twice 1. Doubles leave only rounding.
    outside({
      what: 'breadboard end of black cherry, peg of 8 mm 240 mm from the fixed one, 6 to 11 %: slot, mm',
      source: 'wood-handbook',
      at: 'Table 13-5',
      expected: 12.976,
      got: slots[0]?.length,
      tolerance: 5e-10,
    });
    expect(answered(breadboardEnd({ ...table, margin: 0 })).value.slots[0]?.length).toBeCloseTo(10.976, 9);
  });

  it('says how far the panel stands out of the end or falls short', () => {
    const { dry, wet } = answered(breadboardEnd(table)).value;
    // Half the panel: 300 x 0.00248 x 2 and x 3.
    expect(dry.near).toBeCloseTo(-1.488, 9);
    expect(wet.far).toBeCloseTo(2.232, 9);
    const aside = answered(breadboardEnd({ ...table, pegs: [60, 200, 540] })).value.wet;
    expect(aside.near + aside.far).toBeCloseTo(4.464, 9);
    expect(aside.near).toBeCloseTo(1.488, 9);
  });

  it('fixes another peg where it is told to: the far edge then moves more', () => {
    const end = answered(breadboardEnd({ ...table, fixed: 0 }));
    expect(end.value.slots.map((slot) => slot.fixed)).toEqual([true, false, false]);
    // 540 of 600 mm lie beyond it: 540 x 0.00248 x 3.
    expect(end.value.wet.far).toBeCloseTo(540 * 0.00248 * 3, 9);
    expect(end.working.steps.at(-1)?.gives.value).toBeCloseTo(end.value.wet.far, 9);
  });

  it.each([
    ['pegs', { pegs: [] }],
    ['pegs.0', { pegs: [-5, 300] }],
    ['peg', { peg: 0 }],
    ['tenonWidth', { tenonWidth: 10 }],
    ['width', { width: 0 }],
  ])('names %s', (field, wrong) => {
    expect(breadboardEnd({ ...table, ...wrong })).toMatchObject({ kind: 'problem', field });
  });
});
