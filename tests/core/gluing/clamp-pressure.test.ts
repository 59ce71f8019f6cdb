import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { clampPressure } from '../../../src/core/gluing/clamp-pressure.ts';
import { findSpecies } from '../../../src/tables/species.ts';
import { outside } from '../../setup/outside.ts';
import { solved } from './helpers.ts';

describe('clampPressure', () => {
  it.each([
    ['light', 0.3, 100],
    ['dense', 0.8, 250],
  ])('of %s wood is what the handbook says', (kind, gravity, psi) => {
    // The handbook rounds both pressures to the nearest 100 kPa, so half of that is the tolerance.
    outside({
      what: `clamp pressure for ${kind} wood, specific gravity ${gravity}: kPa (${psi} psi)`,
      source: 'wood-handbook-memory',
      at: 'chapter 10',
      expected: unit(psi, 'psi').toNumber('kPa'),
      got: solved(clampPressure(gravity)).value,
      tolerance: 50,
    });
  });
  it('lies on a straight line in between', () => {
    expect(solved(clampPressure(0.525)).value).toBeCloseTo(1200, 9);
    const cherry = findSpecies('cherry, black')?.specificGravity?.value ?? 0;
    expect(solved(clampPressure(cherry)).value).toBeCloseTo(700 + (1000 * 0.15) / 0.35, 9);
  });
  it('is lighter for a glue that wants less', () => {
    const light = solved(clampPressure(0.7, 0.1));
    expect(light.value).toBeCloseTo(170, 9);
    expect(light.working.steps).toHaveLength(2);
  });
  it.each([
    [0, 1, 'specificGravity'],
    [2, 1, 'specificGravity'],
    [Number.NaN, 1, 'specificGravity'],
    [0.5, 0, 'pressureShare'],
  ])('refuses %d and %d', (gravity, share, field) => {
    expect(clampPressure(gravity, share)).toMatchObject({ kind: 'problem', field });
  });
});
