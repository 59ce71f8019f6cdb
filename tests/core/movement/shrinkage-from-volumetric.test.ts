import { expect, it } from 'vitest';
import { shrinkageFromVolumetric } from '../../../src/core/movement/shrinkage-from-volumetric.ts';
import { species } from '../../../src/tables/species.ts';
import { outside } from '../../setup/outside.ts';

const complete = species.flatMap(({ shrinkage }) => {
  const { radial, tangential, volumetric } = shrinkage ?? {};
  return radial && tangential && volumetric ? [{ radial, tangential, volumetric }] : [];
});
const mean = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;

it('takes the mean proportions of the tabulated woods', () => {
  expect(complete).toHaveLength(40);
  const guess = shrinkageFromVolumetric(1);
  // Taken to two decimals.
  outside({
    what: 'radial and tangential shrinkage as a part of the volumetric, mean of 40 woods',
    source: 'wood-handbook',
    at: 'Tables 4-3 and 4-4',
    expected: [
      mean(complete.map((one) => one.radial / one.volumetric)),
      mean(complete.map((one) => one.tangential / one.volumetric)),
    ],
    got: [guess.radial, guess.tangential],
    tolerance: 0.005,
  });
});

it('is off by no more than it says', () => {
  for (const one of complete) {
    const guess = shrinkageFromVolumetric(one.volumetric);
    expect(Math.abs(guess.radial / one.radial - 1)).toBeLessThan(0.37);
    expect(Math.abs(guess.tangential / one.tangential - 1)).toBeLessThan(0.24);
  }
});
