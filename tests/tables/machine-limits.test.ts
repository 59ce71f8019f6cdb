import { describe, expect, it } from 'vitest';
import { parseLength } from '../../src/core/length/parse-length.ts';
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

  // Inches by definition (NIST SP 811): a piece just as long or as thick as the limit that an inch rule shows is not below it.
  it('take a piece of the inches that they are said to be', () => {
    const inches = (text: string) => parseLength(text, 'in');
    for (const { leastLength } of [jointer, tableSaw, guidedSaw]) expect(leastLength.mm).toBe(inches('12'));
    expect(planer.leastLength.mm).toBe(inches('14'));
    expect(jointer.leastThickness.mm).toBe(inches('1/2'));
    for (const { leastThickness } of [planer, router]) expect(leastThickness.mm).toBe(inches('1/4'));
    for (const { leastThickness } of [tableSaw, guidedSaw]) expect(leastThickness.mm).toBe(inches('1/8'));
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
