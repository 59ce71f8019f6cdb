import { describe, expect, it } from 'vitest';
import type { Limit } from '../../src/core/milling/machine-limits.ts';
import { machineLimits, millingPractice } from '../../src/tables/machine-limits.ts';
import { sources } from '../../src/tables/sources.ts';
import { outside } from '../setup/outside.ts';

describe('limits of machines', () => {
  const { jointer, planer, tableSaw, guidedSaw, router, ...others } = machineLimits;
  const limits = [jointer, planer, tableSaw, guidedSaw, router].flatMap((machine): Limit[] => Object.values(machine));

  it('are above zero and never claim to have been read where they were not', () => {
    for (const { mm, source } of [...limits, ...Object.values(others)]) {
      expect(mm).toBeGreaterThan(0);
      expect(['common-practice', 'from-memory']).toContain(sources[source].kind);
    }
    for (const { value, source } of Object.values(millingPractice)) {
      expect(value).toBeGreaterThan(0);
      expect(sources[source].kind).toBe('common-practice');
    }
  });

  it('ask for push blocks below 3 in and passes of no more than 1/8 in', () => {
    // Whole millimetres.
    outside({
      what: 'push blocks when jointing wood narrower than 3 in: mm',
      source: 'osha-memory',
      expected: 76.2,
      got: machineLimits.pushBlockWidth.mm,
      tolerance: 0.5,
    });
    // Tenths of a millimetre.
    outside({
      what: 'deepest pass at the jointer, 1/8 in: mm',
      source: 'common-practice',
      expected: 25.4 / 8,
      got: jointer.depthPerPass.mm,
      tolerance: 0.05,
    });
  });
});
