import { expect, it } from 'vitest';
import { shrinkageFromVolumetric } from '../../../src/core/movement/shrinkage-from-volumetric.ts';
import { species } from '../../../src/tables/species.ts';

const complete = species.flatMap(({ shrinkage }) => {
  const { radial, tangential, volumetric } = shrinkage ?? {};
  return radial && tangential && volumetric ? [{ radial, tangential, volumetric }] : [];
});
const mean = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;

// Wood handbook (FPL-GTR-190), Tables 4-3 and 4-4: the parts are the tables' means to two decimals.
it('takes the mean proportions of the tabulated woods', () => {
  expect(complete).toHaveLength(40);
  const guess = shrinkageFromVolumetric(1);
  expect(guess.radial).toBeCloseTo(mean(complete.map((one) => one.radial / one.volumetric)), 2);
  expect(guess.tangential).toBeCloseTo(mean(complete.map((one) => one.tangential / one.volumetric)), 2);
});

it('is off by no more than it says', () => {
  for (const one of complete) {
    const guess = shrinkageFromVolumetric(one.volumetric);
    expect(Math.abs(guess.radial / one.radial - 1)).toBeLessThan(0.37);
    expect(Math.abs(guess.tangential / one.tangential - 1)).toBeLessThan(0.24);
  }
});
