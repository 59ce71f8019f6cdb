import { createHash } from 'node:crypto';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { applyBackup } from '../../../src/store/backup/apply-backup.ts';
import { backupAge, backupMade } from '../../../src/store/backup/backup-age.ts';
import { backupText } from '../../../src/store/backup/backup-text.ts';
import { canonicalJson } from '../../../src/store/backup/canonical-json.ts';
import { eraseEverything } from '../../../src/store/backup/erase-everything.ts';
import { exportBackup } from '../../../src/store/backup/export-backup.ts';
import { previewBackup } from '../../../src/store/backup/preview-backup.ts';
import { largestBackup, type ReadOutcome, readBackup } from '../../../src/store/backup/read-backup.ts';
import { restoreSnapshot } from '../../../src/store/backup/restore-snapshot.ts';
import {
  keepAutomaticSnapshot,
  keepSnapshot,
  listSetAside,
  listSnapshots,
} from '../../../src/store/backup/snapshots.ts';
import { storedContents } from '../../../src/store/backup/stored-contents.ts';
import { boards } from '../../../src/store/boards.ts';
import type { Contents } from '../../../src/store/contents.ts';
import { closeDatabase } from '../../../src/store/db.ts';
import { readDraft, writeDraft } from '../../../src/store/drafts.ts';
import { pieces } from '../../../src/store/pieces.ts';
import { emptyDatabase } from '../empty-database.ts';
import { put } from '../put.ts';
import { aBoard, oneOfEach, sampleContents } from '../samples.ts';

beforeEach(emptyDatabase);

type Read = Extract<ReadOutcome, { kind: 'read' }>;

async function read(text: string): Promise<Read> {
  const outcome = await readBackup(text);
  if (outcome.kind !== 'read') throw new Error(outcome.kind);
  return outcome;
}

/** A file with something in it changed after it was made. */
async function tampered(change: (file: Record<string, never>) => void): Promise<string> {
  const file = JSON.parse(await backupText(sampleContents(), 1, 5));
  change(file);
  return JSON.stringify(file);
}

describe('a backup', () => {
  test('brings everything back, property by property', async () => {
    const { contents } = await read(await backupText(sampleContents(), 1, 5));
    expect((await applyBackup(contents, 'replace')).kind).toBe('applied');
    const before = (await storedContents()).contents;
    expect(before).toEqual(sampleContents());
    const { name, text } = await exportBackup(Date.UTC(2025, 2, 14));
    expect(name).toBe('boardwright-2025-03-14.json');

    await eraseEverything();
    expect(await boards.all()).toEqual([]);
    await applyBackup((await read(text)).contents, 'replace');
    expect((await storedContents()).contents).toEqual(before);
  });

  test('carries the SHA-256 of its canonical JSON', async () => {
    const { kinds, removed, checksum } = JSON.parse(await backupText(sampleContents(), 1, 5));
    // Against the outside: Node's own SHA-256 (OpenSSL).
    const expected = createHash('sha256').update(canonicalJson({ kinds, removed })).digest('hex');
    expect(checksum).toEqual({ algorithm: 'SHA-256', value: expected });
  });

  test('made pretty by another program is still unaltered', async () => {
    const text = await backupText(sampleContents(), 1, 5);
    const { kinds, ...rest } = JSON.parse(text);
    expect(await read(JSON.stringify({ kinds, ...rest }, null, 4))).toMatchObject({ altered: false, damaged: [] });
  });

  test('keeps properties that this version does not know', async () => {
    const contents = structuredClone(sampleContents()) as { kinds: { board: Record<string, unknown>[] } } & Contents;
    Object.assign(contents.kinds.board[0] as object, { laterIdea: { grain: 'curly' } });
    await applyBackup((await read(await backupText(contents, 1, 5))).contents, 'replace');
    expect(await boards.get('board-1')).toMatchObject({ laterIdea: { grain: 'curly' } });
    const board = await boards.change('board-1', (before) => ({ ...before, width: 1 }));
    expect(board).toMatchObject({ width: 1, laterIdea: { grain: 'curly' } });
  });
});

describe('reading a file', () => {
  test.each([
    ['notJson', ''],
    ['notJson', '{"format":"boardwright-backup"'],
    ['notBackup', 'null'],
    ['notBackup', '[]'],
    ['notBackup', '{"boards":[]}'],
    ['notBackup', '{"format":"boardwright-backup","formatVersion":1,"schema":1,"kinds":[]}'],
    ['notBackup', '{"format":"boardwright-backup","formatVersion":"1","schema":1,"kinds":{}}'],
    ['notBackup', '{"format":"boardwright-backup","formatVersion":1,"schema":0.5,"kinds":{}}'],
    ['newer', '{"format":"boardwright-backup","formatVersion":2,"schema":1,"kinds":{}}'],
    ['newer', '{"format":"boardwright-backup","formatVersion":1,"schema":99,"kinds":{}}'],
  ])('%s: %s', async (kind, text) => {
    expect((await readBackup(text)).kind).toBe(kind);
  });

  test('one that is too large is refused before it is parsed', async () => {
    const parse = vi.spyOn(JSON, 'parse');
    expect(await readBackup(new Blob(['x'.repeat(largestBackup + 1)]))).toEqual({ kind: 'tooBig' });
    expect(parse).not.toHaveBeenCalled();
    parse.mockRestore();
  });

  test('a changed figure shows', async () => {
    const text = await tampered((file) =>
      Object.assign((file as never as Contents).kinds.board?.[0] ?? {}, { width: 999 }),
    );
    expect(await read(text)).toMatchObject({ altered: true, damaged: [] });
  });

  test('damaged records are set aside and listed; the others come in', async () => {
    const good = sampleContents().kinds.board?.[0];
    const text = await tampered((file) => {
      Object.assign(file, {
        kinds: {
          board: [
            good,
            { ...good, id: 'b2', width: 'wide' },
            { ...good, id: 'b3', thickness: {} },
            { ...good, id: '' },
            { ...good, note: 'again' },
            'no record',
          ],
          piece: 'no list',
          hammer: [{ id: 'h' }],
        },
        removed: [{ kind: 'board' }],
      });
    });
    const { contents, damaged } = await read(text);
    expect(contents).toEqual({ kinds: { board: [good], piece: [], hammer: [] }, removed: [] });
    expect(damaged.map(({ kind, why }) => `${kind}: ${why.split(':')[0]}`).sort()).toEqual([
      'board: id',
      'board: not a record',
      'board: there twice',
      'board: thickness',
      'board: width',
      'hammer: a kind of record that this app does not know',
      'piece: not a record',
      'removed: id',
    ]);
    await applyBackup(contents, 'merge', { damaged });
    expect((await listSetAside())[0]?.damaged).toEqual(
      damaged.map(({ kind, why, record }) => ({ kind, why, text: JSON.stringify(record) })),
    );
  });

  test('names that reach for a prototype are set aside, and reach nothing', async () => {
    const text = (await backupText(sampleContents(), 1, 5)).replaceAll(
      '"chalk":"C1"',
      '"chalk":"C1","__proto__":{"polluted":true},"warp2":{"constructor":{"prototype":{"polluted":true}}}',
    );
    const { contents, damaged } = await read(text);
    expect(damaged).toMatchObject([{ kind: 'board', why: 'holds the name __proto__' }]);
    await applyBackup(contents, 'replace', { damaged });
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
    expect(await boards.all()).toEqual([]);
  });

  test('what is nested without end is set aside', async () => {
    const deep = `"chalk":"C1","more":${'['.repeat(40)}${']'.repeat(40)}`;
    const text = (await backupText(sampleContents(), 1, 5)).replace('"chalk":"C1"', deep);
    expect((await read(text)).damaged).toMatchObject([{ kind: 'board', why: 'nested too deep' }]);
  });

  test('1e999 is no number', async () => {
    const text = (await backupText(sampleContents(), 1, 5)).replace('"width":180', '"width":1e999');
    expect((await read(text)).damaged).toMatchObject([{ kind: 'board', why: expect.stringContaining('width') }]);
  });
});

describe('applying', () => {
  const mineAndTheirs = async () => {
    const [same, older, mine] = await boards.addMany([
      aBoard({ chalk: 'same' }),
      aBoard({ chalk: 'was' }),
      aBoard({ chalk: 'mine' }),
    ]);
    if (!same || !older || !mine) throw new Error('nothing added');
    const newer = { ...older, chalk: 'is', revision: 2 };
    const conflict = { ...mine, chalk: 'theirs', updated: mine.updated + 1 };
    const fresh = { ...oneOfEach.board, id: 'new' };
    const theirs: Contents = { kinds: { board: [same, newer, conflict, fresh] }, removed: [] };
    return { same, newer, mine, conflict, fresh, theirs };
  };

  test('a merge is shown first, changes what it said, and twice is the same as once', async () => {
    const { same, newer, conflict, fresh, theirs } = await mineAndTheirs();
    const { merge: preview } = await previewBackup(theirs);
    expect(preview.map(({ difference }) => difference).sort()).toEqual(['conflict', 'new', 'newer', 'same']);
    const outcome = await applyBackup(theirs, 'merge');
    expect(outcome).toMatchObject({ kind: 'applied', entries: preview });
    const byId = (list: { id: string }[]) => [...list].sort((a, b) => (a.id < b.id ? -1 : 1));
    expect(byId(await boards.all())).toEqual(byId([same, newer, conflict, fresh]));

    await applyBackup(theirs, 'merge');
    expect(byId(await boards.all())).toEqual(byId([same, newer, conflict, fresh]));
  });

  test('the side that the maker chose in a conflict stays, also at the next merge', async () => {
    const { mine, theirs } = await mineAndTheirs();
    const choices = new Map([[`board/${mine.id}`, 'mine' as const]]);
    await applyBackup(theirs, 'merge', { choices });
    expect(await boards.get(mine.id)).toMatchObject({ chalk: 'mine', revision: 2 });
    await applyBackup(theirs, 'merge');
    expect(await boards.get(mine.id)).toMatchObject({ chalk: 'mine', revision: 2 });
  });

  test('a record removed here comes back from an older file when the maker asks for it', async () => {
    const board = await boards.add(aBoard({ chalk: 'gone' }));
    const { text } = await exportBackup();
    await boards.remove(board.id);
    const { contents } = await read(text);
    await applyBackup(contents, 'merge');
    expect(await boards.all()).toEqual([]);
    await applyBackup(contents, 'merge', { choices: new Map([[`board/${board.id}`, 'theirs' as const]]) });
    expect(await boards.all()).toMatchObject([{ chalk: 'gone', revision: 3 }]);
  });

  test('a replacement says what goes, and can be taken back', async () => {
    const own = await boards.add(aBoard({ chalk: 'own' }));
    const { replace: preview } = await previewBackup(sampleContents());
    expect(preview.filter(({ difference }) => difference === 'new')).toHaveLength(10);
    expect(preview.filter(({ difference }) => difference === 'removed')).toHaveLength(1);
    const outcome = await applyBackup(sampleContents(), 'replace');
    if (outcome.kind !== 'applied') throw outcome.error;
    expect(await boards.get(own.id)).toBeUndefined();
    await restoreSnapshot(outcome.snapshot.id);
    expect(await boards.all()).toEqual([own]);
    expect(await pieces.all()).toEqual([]);
  });

  test('that fails in the middle changes nothing', async () => {
    const own = await boards.add(aBoard({ chalk: 'own' }));
    const real = IDBObjectStore.prototype.put;
    let puts = 0;
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...given) {
      puts += 1;
      if (puts === 8) throw new DOMException('full', 'QuotaExceededError');
      return real.apply(this, given);
    });
    expect(await applyBackup(sampleContents(), 'replace')).toMatchObject({
      kind: 'failed',
      error: { message: 'full' },
    });
    expect(puts).toBeGreaterThanOrEqual(8);
    put.mockRestore();
    expect((await storedContents()).contents.kinds).toMatchObject({ board: [own], piece: [], shop: [] });
  });

  test('does not begin when no snapshot can be kept', async () => {
    const own = await boards.add(aBoard({}));
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    expect((await applyBackup(sampleContents(), 'replace')).kind).toBe('failed');
    put.mockRestore();
    expect(await boards.all()).toEqual([own]);
  });
});

describe('snapshots', () => {
  const day = 24 * 60 * 60 * 1000;

  test('are kept by themselves once a day, when something has changed, and the oldest go', async () => {
    const now = Date.now();
    expect(await keepAutomaticSnapshot(now)).toBeUndefined();
    for (let days = 0; days < 10; days += 1) {
      const board = await boards.add(aBoard({}));
      await put('board', board);
      expect(await keepAutomaticSnapshot(now + days * day)).toMatchObject({ counts: { board: days + 1 } });
      expect(await keepAutomaticSnapshot(now + days * day + 1000)).toBeUndefined();
      vi.setSystemTime(now + (days + 1) * day - 500);
    }
    vi.useRealTimers();
    expect(await keepAutomaticSnapshot(now + 30 * day)).toBeUndefined();
    const list = await listSnapshots();
    expect(list).toHaveLength(7);
    expect(list.map(({ at }) => at)).toEqual(list.map(({ at }) => at).sort((a, b) => b - a));
  });

  test('go on once a clock that was years ahead is right again', async () => {
    const now = Date.now();
    await keepSnapshot({ contents: sampleContents(), schema: 1, reason: 'automatic', at: now + 1000 * day });
    await boards.add(aBoard({}));
    expect(await keepAutomaticSnapshot(now + day)).toMatchObject({ counts: { board: 1 } });
  });

  test('of different reasons do not push each other out', async () => {
    for (let at = 0; at < 5; at += 1) {
      await keepSnapshot({ contents: sampleContents(), schema: 1, reason: 'merge', at });
      await keepSnapshot({ contents: sampleContents(), schema: 1, reason: 'restore', at });
    }
    expect((await listSnapshots()).map(({ at, reason }) => `${reason}${at}`).sort()).toEqual(
      ['merge2', 'merge3', 'merge4', 'restore2', 'restore3', 'restore4'].sort(),
    );
  });
});

describe('the age of the last backup', () => {
  test('counts what has changed since', async () => {
    await boards.addMany([aBoard({}), aBoard({})]);
    expect(await backupAge()).toEqual({ madeAt: undefined, changed: 2 });
    await new Promise((resolve) => setTimeout(resolve, 2));
    const at = Date.now();
    await backupMade(at);
    expect(await backupAge()).toEqual({ madeAt: at, changed: 0 });
    await new Promise((resolve) => setTimeout(resolve, 2));
    const [first] = await boards.all();
    await boards.remove(first?.id ?? '');
    expect(await backupAge()).toEqual({ madeAt: at, changed: 1 });
  });
});

test('erasing leaves nothing', async () => {
  await boards.add(aBoard({}));
  await writeDraft('k', 1);
  await keepSnapshot({ contents: sampleContents(), schema: 1, reason: 'merge', at: 1 });
  await eraseEverything();
  expect(await indexedDB.databases()).toEqual([]);
  expect([await boards.all(), await readDraft('k'), await listSnapshots()]).toEqual([[], undefined, []]);
  await closeDatabase();
});
