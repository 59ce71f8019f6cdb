import { unit } from 'mathjs';
import { expect, test } from 'vitest';
import { partsVolume } from '../../../src/core/lumber/parts-volume.ts';
import { outside } from '../../setup/outside.ts';

test('volume and board feet of a list of parts', () => {
  const parts = [
    { name: 'side', length: 24 * 25.4, width: 12 * 25.4, thickness: 0.75 * 25.4, quantity: 2 },
    { name: 'shelf', length: 914.4, width: 279.4, thickness: 19.05, quantity: 3 },
  ];
  const { cubicMetres, boardFeet } = partsVolume(parts);
  const cubicInches = 2 * 24 * 12 * 0.75 + 3 * 36 * 11 * 0.75;
  // Floating point alone parts them.
  outside({
    what: '2 sides of 24 x 12 x 3/4 in and 3 shelves of 36 x 11 x 3/4 in: board feet',
    source: 'nist-sp811',
    at: '144 cubic inches a board foot',
    expected: cubicInches / 144,
    got: boardFeet.value,
    tolerance: 5e-10,
  });
  outside({
    what: '2 sides of 24 x 12 x 3/4 in and 3 shelves of 36 x 11 x 3/4 in: m3',
    source: 'mathjs',
    at: 'unit',
    expected: unit(cubicInches, 'in^3').toNumber('m^3'),
    got: cubicMetres.value,
    tolerance: 5e-13,
  });
});

test('the working has a step for each part, and its last step is the value', () => {
  const { cubicMetres, boardFeet } = partsVolume([{ name: 'leg', length: 700, width: 60, thickness: 60, quantity: 4 }]);
  expect(cubicMetres.working.steps.map(({ finds }) => finds)).toEqual(['leg', 'volume of the parts']);
  expect(cubicMetres.working.steps.at(-1)?.gives.value).toBe(cubicMetres.value);
  expect(boardFeet.working.steps.at(-1)?.gives.value).toBe(boardFeet.value);
});

test('nothing listed holds nothing', () => {
  expect(partsVolume([]).boardFeet.value).toBe(0);
});
