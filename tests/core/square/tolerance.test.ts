import { expect, it } from 'vitest';
import { tolerance } from '../../../src/core/square/tolerance.ts';
import { readingPrecisions, usualPrecision, usualSpringBack } from '../../../src/tables/reading-precisions.ts';
import { sources } from '../../../src/tables/sources.ts';
import { squarenessTolerances } from '../../../src/tables/squareness-tolerances.ts';

// 0.75 a metre on an end of 800 allows 0.6.
it.each([
  ['within', 0.4, 0.5, 0],
  ['within', -0.6, 0.5, 0],
  ['outside', 0.7, 0.5, 0],
  ['outside', -1.5, 1, 0],
  ['unseen', 0.4, 0.7, 0],
  ['unseen', 0.8, 1, 0],
  ['unseen', 0, Number.POSITIVE_INFINITY, 0],
  // The tool's own error of 0.5 a metre hides another 0.4.
  ['unseen', 0.4, 0.5, -0.5],
] as const)('%s: slide %f seen from %f', (verdict, slide, detectable, tool) => {
  const found = tolerance(slide, 800, 0.75, detectable, tool);
  expect(found).toMatchObject({ value: { verdict, allowed: expect.closeTo(0.6, 9) } });
});

it('refuses impossible input', () => {
  expect(tolerance(Number.NaN, 800, 0.75, 1)).toMatchObject({ field: 'slide' });
  expect(tolerance(1, 0, 0.75, 1)).toMatchObject({ field: 'end' });
  expect(tolerance(1, 800, 0, 1)).toMatchObject({ field: 'perMetre' });
  expect(tolerance(1, 800, 1, 1, 900)).toMatchObject({ field: 'toolPerMetre' });
  // A slope is the same number in any unit: a maker who types thousandths isn't told of inches.
  expect(tolerance(1, 800, 200, 1)).toMatchObject({ message: { quantities: { 0: { value: 100, unit: 'factor' } } } });
});

it('rests on rows that are marked as common practice, from fine work to rough', () => {
  for (const { source } of [...squarenessTolerances, ...readingPrecisions, usualSpringBack]) {
    expect(sources[source].kind).toBe('common-practice');
  }
  const allowed = squarenessTolerances.map(({ perMetre }) => perMetre);
  expect(allowed).toEqual([...allowed].sort((one, other) => one - other));
  expect(readingPrecisions.find(({ id }) => id === 'tape')).toBe(usualPrecision);
});
