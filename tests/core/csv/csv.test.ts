import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guardFormula, unguardFormula } from '../../../src/core/csv/formula-guard.ts';
import { readCsv } from '../../../src/core/csv/read-csv.ts';
import { writeCsv } from '../../../src/core/csv/write-csv.ts';
import { outside } from '../../setup/outside.ts';

const cellsOf = (text: string, separator?: string) => readCsv(text, separator).map(({ cells }) => cells);

describe('readCsv', () => {
  it.each([
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('reads the example %j as the standard does', (text, expected) => {
    outside({ what: JSON.stringify(text), source: 'rfc-4180', at: 'section 2', expected, got: cellsOf(text) });
  });

  it.each([
    ['', []],
    ['\ufeffa,b', [['a', 'b']]],
    ['a,\n,b\r\rc', [['a', ''], ['', 'b'], ['c']]],
    ['""\r\n', [['']]],
    ['6 1/4",8', [['6 1/4"', '8']]],
    ['a,""', [['a', '']]],
  ])('reads %j', (text, cells) => {
    expect(cellsOf(text)).toEqual(cells);
  });

  it('takes another separator', () => {
    expect(cellsOf('a;"b;c";1,5', ';')).toEqual([['a', 'b;c', '1,5']]);
    expect(cellsOf('a\tb', '\t')).toEqual([['a', 'b']]);
  });

  it('marks broken records and counts the lines of the file', () => {
    expect(readCsv('a,b\n\n"x\ny"z,1\nc,"open\n,d')).toEqual([
      { line: 1, cells: ['a', 'b'] },
      { line: 3, cells: ['x\nyz', '1'], broken: 'text-after-quote' },
      { line: 5, cells: ['c', 'open\n,d'], broken: 'open-quote' },
    ]);
  });

  it('never fails on any text', () => {
    const pieces = fc.array(fc.constantFrom('"', ',', '\r', '\n', 'a', '""', '\ufeff'), { maxLength: 20 });
    fc.assert(
      fc.property(pieces, (parts) => {
        const text = parts.join('');
        const kept = readCsv(text)
          .flatMap(({ cells }) => cells)
          .join('');
        expect(kept.replace(/[^a]/g, '')).toBe(text.replace(/[^a]/g, ''));
      }),
      { numRuns: 2000 },
    );
  });

  it('reads a quote that never closes in a large file without running out of stack', () => {
    const [row] = readCsv(`"${'x""y,\r\n'.repeat(500_000)}`);
    expect(row?.broken).toBe('open-quote');
    expect(readCsv('"'.repeat(4_000_001))).toMatchObject([{ broken: 'open-quote' }]);
  });

  it('reads no more records than are asked for', () => {
    expect(readCsv('a\n\nb\nc', ',', 2).map(({ cells }) => cells)).toEqual([['a'], ['b']]);
  });
});

const riskyPieces = fc.constantFrom(
  "'",
  '"',
  '=',
  '+',
  '-',
  '@',
  '＝',
  '\t',
  '\r',
  '\n',
  '\r\n',
  ',',
  ';',
  ' ',
  '\u00a0',
  'a',
  '1',
  'é',
);
const anyCell = fc.oneof(
  fc.array(riskyPieces, { maxLength: 10 }).map((parts) => parts.join('')),
  fc.string({ unit: 'binary' }),
);

describe('writeCsv', () => {
  it('gives every table back through readCsv, formulas and all', () => {
    const rows = fc.array(fc.array(anyCell, { minLength: 1, maxLength: 4 }), { maxLength: 5 });
    fc.assert(
      fc.property(rows, (table) => {
        const text = writeCsv(table);
        const back = readCsv(text);
        expect(back.map(({ cells }) => cells.map(unguardFormula))).toEqual(table);
        expect(back.some(({ broken }) => broken)).toBe(false);
      }),
      { numRuns: 3000 },
    );
  });

  it('writes as the standard says', () => {
    outside({
      what: 'cells with quotes, a comma and a line break, written',
      source: 'rfc-4180',
      at: 'section 2',
      expected: 'a,"b ""c""","d,e","f\ng",\r\n',
      got: writeCsv([['a', 'b "c"', 'd,e', 'f\ng', '']]),
    });
    expect(writeCsv([[''], ['x']])).toBe('""\r\nx\r\n');
  });
});

describe('guardFormula', () => {
  it.each([
    ['=1+1', "'=1+1"],
    ['+1', "'+1"],
    ['-1', "'-1"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['  =1', "'  =1"],
    ['"=1', `'"=1`],
    ["'=1", "''=1"],
    ['＝1', "'＝1"],
    ['\t=1', "\t'=1"],
    ['cherry;=1', "cherry;'=1"],
    ['8/4 cherry', '8/4 cherry'],
    ["maker's = good", "maker's = good"],
    ["'hello", "'hello"],
  ])('makes %j into %j', (cell, safe) => {
    expect(guardFormula(cell)).toBe(safe);
    expect(unguardFormula(safe)).toBe(cell);
  });

  it('goes through a long run of quotes and blanks once', () => {
    // Gone through once for each of them, this takes minutes.
    const long = `${`'" `.repeat(100_000)}a`;
    const start = performance.now();
    expect(guardFormula(long)).toBe(long);
    expect(performance.now() - start).toBeLessThan(1_000);
  });

  it('leaves nothing that begins a formula, wherever a spreadsheet parts the file', () => {
    fc.assert(
      fc.property(fc.array(anyCell, { minLength: 1, maxLength: 4 }), (cells) => {
        for (const part of writeCsv([cells]).split(/[,;\t\r\n]/))
          expect(part.replace(/^"/, '').trimStart()).not.toMatch(/^[=+\-@＝＋－＠]/);
      }),
      { numRuns: 3000 },
    );
  });
});
