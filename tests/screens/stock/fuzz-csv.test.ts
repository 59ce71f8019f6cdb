import { parse } from 'csv-parse/sync';
import { beforeAll, expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { readCsv } from '../../../src/core/csv/read-csv.ts';
import { writeRackCsv } from '../../../src/core/lumber/write-rack-csv.ts';
import { rackRow, readRackImport } from '../../../src/screens/stock/files/rack-rows.ts';
import { damage } from '../../../src/store/backup/json-schema.ts';
import { schemas } from '../../../src/store/backup/schemas.ts';
import { boards as store } from '../../../src/store/boards.ts';
import type { Board } from '../../../src/store/records/board.ts';
import { randomFrom } from '../../store/backup/mutate.ts';
import { emptyDatabase } from '../../store/empty-database.ts';
import { aBoard } from '../../store/samples.ts';

const files = 10_000;
/** Every so many files with boards in them is also taken in. */
const applied = 15;

/** Cells that a hostile or broken list may hold. */
const hostile = [
  '=HYPERLINK("http://example.invalid","look")',
  '=1+1',
  '+1',
  '-2+3',
  '@SUM(A1)',
  '\t=1',
  '＝1',
  `'"=1`,
  'cherry;=1',
  '<script>alert(1)</script>',
  '<img src=x onerror=alert(1)>',
  '__proto__',
  'constructor',
  'toString',
  '\0',
  '\ud800',
  '\ufffd',
  '"',
  '""',
  '"open',
  '"a"b',
  'NaN',
  'Infinity',
  '1e308',
  '-1',
  '0',
  '1/0',
  '9'.repeat(400),
  ' '.repeat(5_000),
  `'"`.repeat(5_000),
  '1 '.repeat(2_000),
  'x'.repeat(20_000),
  ','.repeat(2_000),
  '\n'.repeat(2_000),
] as const;

/** The text of a list with one to four things wrong with it. */
function mutate(text: string, random: () => number): string {
  const below = (limit: number) => Math.floor(random() * limit);
  const pick = <T>(list: readonly T[]): T => list[below(list.length)] as T;
  let result = text;
  for (let count = 1 + below(4); count > 0; count--) {
    const at = below(result.length + 1);
    const end = Math.min(result.length, at + below(60));
    const lines = result.split('\r\n');
    const line = below(lines.length);
    const cells = (lines[line] ?? '').split(',');
    const cell = below(cells.length);
    const withLine = (changed: readonly string[]) =>
      lines.toSpliced(line, 1, ...(changed.length > 0 ? [changed.join(',')] : [])).join('\r\n');
    switch (below(9)) {
      case 0:
        result = result.slice(0, at);
        break;
      case 1:
        result = result.slice(0, at) + result.slice(end);
        break;
      case 2:
        result = result.slice(0, at) + pick(hostile) + result.slice(at);
        break;
      case 3:
        result = result.slice(0, at) + String.fromCharCode(below(0x300)) + result.slice(at + 1);
        break;
      case 4:
        result = withLine(cells.toSpliced(cell, below(2), pick(hostile)));
        break;
      case 5:
        result = withLine(cells.toSpliced(cell, 1));
        break;
      case 6:
        result = lines.toSpliced(line, 0, ...Array.from({ length: below(40) }, () => lines[line] ?? '')).join('\r\n');
        break;
      case 7:
        result = result.replaceAll(',', pick([';', '\t', ',,', ' , ']));
        break;
      default:
        result = result.replaceAll('\r\n', pick(['\n', '\r', '\n\n', '']));
    }
  }
  return result;
}

const rack: Board[] = [
  aBoard({ chalk: 'A1', farWidth: 172, readings: [{ at: 1, percent: 9.5 }], note: 'ends checked, "wavy"' }),
  aBoard({ chalk: 'B7', species: 'maple-red', thickness: { mm: 27.4 } }),
  aBoard({ chalk: 'C12', state: 'setAside', width: 203.2, length: 3048 }),
  aBoard({ chalk: '', thickness: { quarters: 8 }, note: '=1+1' }),
].map((board, at) => ({ ...board, id: String(at), created: 1, updated: 1, revision: 1 }));

const mark = ({ chalk }: Pick<Board, 'chalk'>) => chalk.trim().toUpperCase();

beforeAll(emptyDatabase);

test(`${files} broken and hostile rack lists do no harm`, { timeout: 300_000 }, async () => {
  const clean = Object.getOwnPropertyNames(Object.prototype).sort();
  const texts = [writeRackCsv(rack.map(rackRow), 'in'), writeRackCsv(rack.map(rackRow), 'mm')];
  const outcomes = { refused: 0, read: 0, boards: 0, problems: 0 };
  let slowest = 0;
  let takenIn = 0;
  const heapBefore = process.memoryUsage().heapUsed;
  let heapMost = 0;
  for (let seed = 0; seed < files; seed++) {
    const broken = mutate(texts[seed % 2] ?? '', randomFrom(seed));
    const existing = seed % applied === 0 ? await store.all() : rack.slice(0, 1);
    const start = performance.now();
    const found = readRackImport(broken, existing, 1000);
    slowest = Math.max(slowest, performance.now() - start);
    heapMost = Math.max(heapMost, process.memoryUsage().heapUsed - heapBefore);
    if (isProblem(found)) {
      outcomes.refused++;
      continue;
    }
    outcomes.read++;
    outcomes.boards += found.boards.length;
    outcomes.problems += found.problems.length;

    // What would be stored is sound, and no mark stands on two boards.
    const records = found.boards.map((board, at) => ({
      ...board,
      id: String(at),
      created: 1,
      updated: 1,
      revision: 1,
    }));
    for (const record of records) expect(damage(schemas.board, record), `file ${seed}`).toBeUndefined();
    const marks = [...existing, ...found.boards].map(mark);
    expect(new Set(marks).size, `file ${seed}`).toBe(marks.length);
    // Nothing is dropped in silence: every line that holds something is a board or has a problem.
    const [, ...lines] = readCsv(broken, separatorOf(broken));
    const held = lines.filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
    const bad = new Set(found.problems.map(({ line }) => line));
    expect(found.boards.length + bad.size, `file ${seed}`).toBe(held.length);

    // It goes out again as another reader of CSV finds it, without a formula in any cell, and comes in as it was.
    const out = writeRackCsv(records.map(rackRow), 'mm');
    // The beginnings that OWASP lists for CSV injection (from memory), full-width ones included.
    for (const cell of (parse(out) as string[][]).flat())
      expect(cell, `file ${seed}`).not.toMatch(/^[=+\-@\t\r＝＋－＠]/);
    const again = readRackImport(out, [], 1000);
    expect(isProblem(again) ? again : again.boards, `file ${seed}`).toEqual(found.boards);

    if (seed % applied !== 0 || found.boards.length === 0) continue;
    await store.addMany(found.boards);
    expect((await store.all()).map(mark).sort(), `file ${seed}`).toEqual([...marks].sort());
    takenIn++;
    if (takenIn % 20 === 0) await emptyDatabase();
  }
  console.info('rack list fuzz', {
    files,
    ...outcomes,
    takenIn,
    slowestMs: Math.round(slowest),
    heapMostMB: Math.round(heapMost / 1e6),
  });
  expect(slowest).toBeLessThan(1_000);
  expect(heapMost).toBeLessThan(500e6);
  // The mutations reach every part of the way in.
  expect(outcomes.refused).toBeGreaterThan(files / 20);
  expect(outcomes.boards).toBeGreaterThan(files / 2);
  expect(outcomes.problems).toBeGreaterThan(files / 2);
  expect(takenIn).toBeGreaterThan(100);
  expect(Object.getOwnPropertyNames(Object.prototype).sort()).toEqual(clean);
});

const head = 'chalk mark,species,thickness (quarters),width (in),length (in),note\r\n';
const size = 1_900_000;
const cell = (text: string) => `${head}X,black cherry,8,${text},96,\r\n`;

test.each([
  ['commas', head + ','.repeat(size)],
  ['line ends', head + '\n'.repeat(size)],
  ['quotes', head + '"'.repeat(size)],
  ['a quote that never closes', `${head}"${'a'.repeat(size)}`],
  ['quotes round nothing', head + '"",'.repeat(size / 3)],
  ['text after quotes, line by line', head + '"a"b\n'.repeat(size / 5)],
  ['columns', `${'a,'.repeat(size / 2)}\n`],
  ['one column of blanks', `width${' '.repeat(size)}(in),\n`],
  ['apostrophes in a cell', cell("'".repeat(size))],
  ['formulas in a cell', cell('=;'.repeat(size / 2))],
  ['blanks in a cell', cell(' '.repeat(size))],
  ['digits in a cell', cell('9'.repeat(size))],
  ['numbers in a cell', cell(`${'1 '.repeat(size / 2)}/`)],
  ['lines that are no boards', head + 'x,y,z\n'.repeat(size / 6)],
])('a file full of %s, as large as any that is read, holds up the phone for less than a second', (_, text) => {
  // The better of two runs: the machine has other work as well.
  const times = [0, 1].map(() => {
    const start = performance.now();
    readRackImport(text, rack, 1000);
    return performance.now() - start;
  });
  expect(Math.min(...times)).toBeLessThan(1_000);
});

const separatorOf = (text: string): string => {
  const [header = ''] = text.split(/[\r\n]/, 1);
  const times = (separator: string) => header.split(separator).length;
  return [',', ';', '\t'].reduce((most, separator) => (times(separator) > times(most) ? separator : most));
};
