import { describe, expect, it } from 'vitest';
import { assumedWarp } from '../../../src/core/breakdown/assumed-warp.ts';

describe('assumedWarp', () => {
  it('grows with the board and says that it is assumed', () => {
    const { cup, bow } = assumedWarp(200, 2400);
    // To 1e-9 mm: doubles.
    expect(cup.value).toBeCloseTo(2, 9);
    expect(bow.value).toBeCloseTo(6, 9);
    expect(cup.working.sources).toEqual(['assumption']);
    expect(bow.working.holds?.text).toMatch(/^Assumed/);
  });
});
