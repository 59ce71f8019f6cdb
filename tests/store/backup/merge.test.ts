import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonicalJson } from '../../../src/store/backup/canonical-json.ts';
import { mergeContents } from '../../../src/store/backup/merge.ts';
import type { Contents, Tombstone } from '../../../src/store/contents.ts';
import type { StoredRecord } from '../../../src/store/records/record.ts';

/** A phone as the store behaves: stamps and revisions as `commit` gives them, merges as `applyBackup` does them. */
class Phone {
  contents: Contents = { kinds: {}, removed: [] };

  put(id: string, note: string, now: number): void {
    const board = this.contents.kinds.board ?? [];
    const before = board.find((record) => record.id === id);
    const tombstone = this.contents.removed.find((removed) => removed.id === id);
    const revision = (before ?? tombstone)?.revision ?? 0;
    const record = { id, created: 0, updated: now, revision: revision + 1, note } as StoredRecord;
    this.contents = {
      kinds: { board: [...board.filter((other) => other.id !== id), record] },
      removed: this.contents.removed.filter((removed) => removed.id !== id),
    };
  }

  remove(id: string, now: number): void {
    const board = this.contents.kinds.board ?? [];
    const before = board.find((record) => record.id === id);
    if (!before) return;
    const tombstone: Tombstone = { kind: 'board', id, revision: before.revision + 1, removed: now };
    this.contents = {
      kinds: { board: board.filter((other) => other.id !== id) },
      removed: [...this.contents.removed, tombstone],
    };
  }

  merge(theirs: Contents): void {
    this.contents = mergeContents(this.contents, theirs).merged;
  }
}

const id = fc.constantFrom('a', 'b', 'c', 'd');
const phone = fc.nat(2);
const step = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({ do: fc.constant('put' as const), phone, id, note: fc.constantFrom('x', 'y', 'z') }),
  },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('remove' as const), phone, id }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('merge' as const), phone, from: phone }) },
);

/** Three phones after a random history of edits, removals and merges, whose clocks stand now and then. */
const histories = fc.array(fc.tuple(step, fc.nat(2)), { maxLength: 40 }).map((steps) => {
  const phones = [new Phone(), new Phone(), new Phone()];
  let now = 1;
  for (const [happens, passes] of steps) {
    now += passes;
    const on = phones[happens.phone] as Phone;
    if (happens.do === 'put') on.put(happens.id, happens.note, now);
    else if (happens.do === 'remove') on.remove(happens.id, now);
    else on.merge((phones[happens.from] as Phone).contents);
  }
  return phones.map(({ contents }) => contents) as [Contents, Contents, Contents];
});

const merged = (...all: Contents[]): string =>
  canonicalJson(all.reduce((mine, theirs) => mergeContents(mine, theirs).merged));

const runs = { numRuns: 2000 };

describe('merging, over random histories of three phones', () => {
  test('is commutative', () => {
    fc.assert(
      fc.property(histories, ([a, b]) => merged(a, b) === merged(b, a)),
      runs,
    );
  });

  test('is idempotent', () => {
    fc.assert(
      fc.property(histories, ([a, b]) => merged(a, b) === merged(a, b, b) && merged(a, b) === merged(a, b, a)),
      runs,
    );
  });

  test('is associative', () => {
    fc.assert(
      fc.property(histories, ([a, b, c]) => {
        const bc = mergeContents(b, c).merged;
        return merged(a, b, c) === merged(a, bc);
      }),
      runs,
    );
  });

  test('never makes a duplicate, nor an id both there and removed', () => {
    fc.assert(
      fc.property(histories, ([a, b]) => {
        const { kinds, removed } = mergeContents(a, b).merged;
        const ids = [...(kinds.board ?? []), ...removed].map((entry) => entry.id);
        return new Set(ids).size === ids.length;
      }),
      runs,
    );
  });

  test('lets no record go that neither side has removed', () => {
    fc.assert(
      fc.property(histories, ([a, b]) => {
        const { kinds, removed } = mergeContents(a, b).merged;
        const left = new Set([...(kinds.board ?? []), ...removed].map((entry) => entry.id));
        return [...(a.kinds.board ?? []), ...(b.kinds.board ?? [])].every((record) => left.has(record.id));
      }),
      runs,
    );
  });
});

describe('how a record of a file stands to the one here', () => {
  const record = (revision: number, note: string, updated = revision) =>
    ({ id: 'a', created: 0, updated, revision, note }) as StoredRecord;
  const holding = (...records: StoredRecord[]): Contents => ({ kinds: { board: records }, removed: [] });
  const removedAt = (revision: number): Contents => ({
    kinds: {},
    removed: [{ kind: 'board', id: 'a', revision, removed: 9 }],
  });
  const nothing: Contents = { kinds: {}, removed: [] };

  test.each([
    ['new', 'theirs', nothing, holding(record(1, 'x'))],
    ['newer', 'theirs', holding(record(1, 'x')), holding(record(2, 'y'))],
    ['older', 'mine', holding(record(3, 'x')), holding(record(2, 'y'))],
    ['same', 'mine', holding(record(2, 'x')), holding(record(2, 'x'))],
    ['conflict', 'theirs', holding(record(2, 'x', 5)), holding(record(2, 'y', 6))],
    ['conflict', 'mine', holding(record(2, 'x', 6)), holding(record(2, 'y', 5))],
    ['removed', 'theirs', holding(record(2, 'x')), removedAt(3)],
    ['older', 'mine', holding(record(4, 'x')), removedAt(3)],
    // Changed here, removed there, from the same revision: nothing is lost.
    ['older', 'mine', holding(record(3, 'x')), removedAt(3)],
    ['older', 'mine', removedAt(3), holding(record(2, 'x'))],
    ['new', 'theirs', removedAt(3), holding(record(4, 'x'))],
  ] as const)('%s: %s stays', (difference, stays, mine, theirs) => {
    expect(mergeContents(mine, theirs).entries).toMatchObject([{ kind: 'board', id: 'a', difference, stays }]);
  });

  test('two phones that look at the demo are asked of what was changed in it alone', () => {
    const demo = (at: number, note: string, updated = at) =>
      holding({ id: 'a', created: at, updated, revision: 1, demo: true, note } as StoredRecord);
    const differences = ([mine, theirs]: readonly [Contents, Contents]) =>
      mergeContents(mine, theirs).entries.map(({ difference }) => difference);
    expect(differences([demo(5, 'read on day 5'), demo(6, 'read on day 6')])).toEqual(['same']);
    expect(differences([demo(5, 'read on day 5', 9), demo(6, 'read on day 6')])).toEqual(['conflict']);
  });

  test('a conflict shows both sides', () => {
    const [entry] = mergeContents(holding(record(2, 'x')), holding(record(2, 'y'))).entries;
    expect(entry).toMatchObject({ mine: { note: 'x' }, theirs: { note: 'y' } });
  });
});
