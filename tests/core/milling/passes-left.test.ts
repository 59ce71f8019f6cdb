import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { passesLeft } from '../../../src/core/milling/passes-left.ts';
import { machineLimits } from '../../../src/tables/machine-limits.ts';

const { planer } = machineLimits;

describe('passes left', () => {
  it('counts up to the next whole pass', () => {
    // 3.4 / 0.8 = 4.25 by hand
    expect(passesLeft(23.4, 20, 0.8, planer)).toMatchObject({ value: { passes: 5 } });
    expect(passesLeft(20, 20, 0.8, planer)).toMatchObject({ value: { passes: 0, each: 0 } });
    // 0.3 is not exact in binary: three passes, not four
    expect(passesLeft(20.3, 20, 0.1, planer)).toMatchObject({ value: { passes: 3 } });
  });

  it('ends at the target, no pass deeper than asked and none to spare', () => {
    const depth = fc.double({ min: 0.05, max: 3.2, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20, noNaN: true }), depth, (off, each) => {
        const left = passesLeft(20 + off, 20, each, planer);
        if (isProblem(left)) throw new Error(left.field);
        // the millionth of a pass that binary fractions are forgiven
        expect(left.value.each).toBeLessThanOrEqual(each * (1 + 1e-5) + 1e-5);
        expect(left.value.passes * left.value.each).toBeCloseTo(left.value.passes === 0 ? 0 : off, 6);
        expect((left.value.passes - 1) * each).toBeLessThanOrEqual(off + 1e-5);
      }),
    );
  });

  it.each([
    [0, 20, 0.8, 'thickness'],
    [Number.NaN, 20, 0.8, 'thickness'],
    [23, 0, 0.8, 'target'],
    [23, 20, 0, 'depth'],
    [23, 20, 3.3, 'depth'],
    [19.4, 20, 0.8, 'thickness'],
  ])('refuses %d to %d at %d', (thickness, target, depth, field) => {
    expect(passesLeft(thickness, target, depth, planer)).toMatchObject({ kind: 'problem', field });
  });
});
