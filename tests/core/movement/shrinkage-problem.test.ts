import { describe, expect, test } from 'vitest';
import { shrinkageProblem } from '../../../src/core/movement/shrinkage-problem.ts';
import { species } from '../../../src/tables/species.ts';

test.each([
  ['tangential', { tangential: 0 }],
  ['tangential', { tangential: 41 }],
  ['tangential', {}],
  ['radial', { radial: Number.NaN }],
  ['radial', { radial: 7.1, tangential: 3.7 }],
  ['volumetric', { tangential: 9, volumetric: 8 }],
] as const)('%s can’t be: %o', (field, shrinkage) => {
  expect(shrinkageProblem(shrinkage)?.field).toBe(field);
});

describe('every wood of the handbook’s tables (FPL-GTR-190, 4-3 and 4-4) can be', () => {
  const tabulated = species.flatMap(({ name, shrinkage }) => (shrinkage ? [[name, shrinkage] as const] : []));
  test.each(tabulated)('%s', (_, shrinkage) => {
    expect(shrinkageProblem(shrinkage)).toBeUndefined();
    // One figure alone can be too.
    for (const one of ['radial', 'tangential', 'volumetric'] as const)
      expect(shrinkageProblem({ [one]: shrinkage[one] })).toBeUndefined();
  });
});
