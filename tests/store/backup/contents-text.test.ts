import fc from 'fast-check';
import { expect, test } from 'vitest';
import { canonicalJson } from '../../../src/store/backup/canonical-json.ts';
import { contentsText } from '../../../src/store/backup/contents-text.ts';
import type { Contents } from '../../../src/store/contents.ts';

const record = fc
  .record({ id: fc.uuid(), note: fc.string(), more: fc.jsonValue() })
  .map((fields) => ({ ...fields, created: 1, updated: 2, revision: 3 }));
const tombstone = fc.record({ kind: fc.string(), id: fc.uuid(), revision: fc.nat(), removed: fc.nat() });
const contents = fc.record({
  removed: fc.array(tombstone, { maxLength: 3 }),
  kinds: fc.dictionary(
    fc.stringMatching(/^[a-z]+$/),
    // A few distinct ones repeated fill more than one slice, and slices to the last place.
    fc
      .tuple(fc.array(record, { minLength: 1, maxLength: 3 }), fc.constantFrom(0, 1, 199, 200, 201, 400))
      .map(([some, count]) => Array.from({ length: count }, (_, at) => some[at % some.length])),
    { maxKeys: 3 },
  ),
});

test('written in slices it is the canonical JSON of the whole', async () => {
  await fc.assert(
    fc.asyncProperty(contents, async (any) => {
      expect(await contentsText(any as Contents)).toBe(canonicalJson(any));
    }),
    { numRuns: 60 },
  );
});

test('others have their turn between the slices', async () => {
  const boards = Array.from({ length: 2000 }, (_, at) => ({ id: `b${at}`, created: 1, updated: 2, revision: 3 }));
  let turns = 0;
  const timer = setInterval(() => turns++);
  await contentsText({ kinds: { board: boards }, removed: [] });
  clearInterval(timer);
  expect(turns).toBeGreaterThanOrEqual(5);
});
