import { expect, it } from 'vitest';
import { nominalQuarters, quartersFromMm, roughThickness } from '../../../src/core/lumber/quarters.ts';

it.each([
  [27.4, 4],
  [25.4, 4],
  [25, 4], // 1 in read to whole millimetres
  [24.8, 3],
  [50.8, 8],
  [51, 8],
  [16, 2.5], // 5/8 in
])('a rough board of %d mm is full of %d quarters', (mm, quarters) => {
  expect(quartersFromMm(mm)).toBe(quarters);
});

it('every name gives itself back through millimetres', () => {
  for (let quarters = 3; quarters <= 24; quarters++)
    expect(nominalQuarters({ mm: roughThickness({ quarters }) })).toBe(quarters);
});
