import { expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { parseLength } from '../../../src/core/length/parse-length.ts';
import { surfacedThickness } from '../../../src/core/lumber/surfaced-thickness.ts';
import { sources } from '../../../src/tables/sources.ts';
import { surfacedThicknesses } from '../../../src/tables/surfaced-thickness.ts';
import { outside } from '../../setup/outside.ts';

it.each([
  [3, '9/16'],
  [4, '13/16'],
  [5, '1 1/16'],
  [6, '1 5/16'],
  [8, '1 3/4'],
  [12, '2 3/4'],
  [16, '3 3/4'],
])('%d/4 surfaces to %s in', (quarters, text) => {
  const found = surfacedThickness(quarters, surfacedThicknesses);
  outside({
    what: `${quarters}/4 surfaced on two sides to ${text} in: mm`,
    source: 'surfaced-thickness',
    expected: parseLength(text, 'in'),
    got: isProblem(found) ? found : found.value,
  });
});

it('has no answer where the table has no row, and a source for each row', () => {
  expect(surfacedThickness(7, surfacedThicknesses)).toMatchObject({ kind: 'problem', field: 'quarters' });
  for (const row of surfacedThicknesses) expect(sources[row.source]).toBeDefined();
});
