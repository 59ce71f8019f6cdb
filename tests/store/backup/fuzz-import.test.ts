import { beforeAll, expect, test } from 'vitest';
import { applyBackup } from '../../../src/store/backup/apply-backup.ts';
import { backupText } from '../../../src/store/backup/backup-text.ts';
import { canonicalJson } from '../../../src/store/backup/canonical-json.ts';
import { joinShops } from '../../../src/store/backup/join-shops.ts';
import { damage } from '../../../src/store/backup/json-schema.ts';
import { mergeContents } from '../../../src/store/backup/merge.ts';
import { readBackup } from '../../../src/store/backup/read-backup.ts';
import { schemas } from '../../../src/store/backup/schemas.ts';
import { storedContents } from '../../../src/store/backup/stored-contents.ts';
import type { Contents } from '../../../src/store/contents.ts';
import { emptyDatabase } from '../empty-database.ts';
import { sampleContents } from '../samples.ts';
import { mutate, randomFrom } from './mutate.ts';

const files = 10_000;
/** Every so many files that could be read is also taken in. */
const applied = 15;

beforeAll(emptyDatabase);

/** What applying leaves: kinds without records are as good as absent. */
const comparable = ({ kinds, removed }: Contents) =>
  canonicalJson({
    kinds: Object.fromEntries(
      Object.entries(kinds)
        .filter(([, records]) => records.length > 0)
        .map(([kind, records]) => [kind, [...records].sort((a, b) => (a.id < b.id ? -1 : 1))]),
    ),
    removed: [...removed].sort((a, b) => (`${a.kind}/${a.id}` < `${b.kind}/${b.id}` ? -1 : 1)),
  });

test(`${files} broken and hostile backups do no harm`, { timeout: 300_000 }, async () => {
  const clean = Object.getOwnPropertyNames(Object.prototype).sort();
  const text = await backupText(sampleContents(), 1, 5);
  const outcomes: Record<string, number> = {};
  let slowest = 0;
  let takenIn = 0;
  for (let seed = 0; seed < files; seed += 1) {
    const broken = mutate(text, randomFrom(seed));
    const start = performance.now();
    const outcome = await readBackup(broken);
    slowest = Math.max(slowest, performance.now() - start);
    outcomes[outcome.kind] = (outcomes[outcome.kind] ?? 0) + 1;
    if (outcome.kind !== 'read') continue;

    const { contents, damaged } = outcome;
    const records = Object.entries(contents.kinds).flatMap(([kind, list]) => list.map((record) => ({ kind, record })));
    for (const { kind, record } of records) {
      expect(damage(schemas[kind as keyof typeof schemas], record), `file ${seed}`).toBeUndefined();
    }
    // Nothing is dropped in silence: every entry of every list is taken in or set aside.
    const file = JSON.parse(broken) as Contents;
    const lists = [...Object.values(file.kinds), ...(file.removed === undefined ? [] : [file.removed])];
    const entries = lists.reduce((sum, list) => sum + (Array.isArray(list) ? list.length : 1), 0);
    expect(records.length + contents.removed.length + damaged.length, `file ${seed}`).toBe(entries);

    if (seed % applied !== 0) continue;
    const before = (await storedContents()).contents;
    const mode = seed % 2 === 0 ? 'merge' : 'replace';
    const result = await applyBackup(contents, mode, { damaged });
    const after = (await storedContents()).contents;
    const expected = mode === 'merge' ? mergeContents(...joinShops(before, contents)).merged : contents;
    expect(result, `file ${seed}`).toMatchObject({ kind: 'applied' });
    expect(comparable(after), `file ${seed}`).toBe(comparable(expected));
    takenIn += 1;
  }
  console.info('import fuzz', { files, ...outcomes, takenIn, slowestMs: Math.round(slowest) });
  expect(slowest).toBeLessThan(1_000);
  // The mutations reach every part of the way in.
  expect(outcomes.read).toBeGreaterThan(files / 4);
  expect(outcomes.notJson).toBeGreaterThan(files / 20);
  expect(outcomes.notBackup).toBeGreaterThan(10);
  expect(takenIn).toBeGreaterThan(100);
  expect(Object.getOwnPropertyNames(Object.prototype).sort()).toEqual(clean);
  expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
});
