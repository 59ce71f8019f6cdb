import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { readCsv } from '../../../src/core/csv/read-csv.ts';
import { parseRackCsv, type RackFile, tooLarge } from '../../../src/core/lumber/parse-rack-csv.ts';
import type { RackRow } from '../../../src/core/lumber/rack-columns.ts';
import { writeRackCsv } from '../../../src/core/lumber/write-rack-csv.ts';
import { outsideCases } from '../../setup/outside.ts';

function read(text: string): RackFile {
  const file = parseRackCsv(text);
  if (isProblem(file)) throw new Error(file.message.text);
  return file;
}

/** Problems as `line field: text`. */
function complaints(text: string): string[] {
  return read(text).problems.map(({ line, problem }) => `${line} ${problem.field}: ${problem.message.text}`);
}

const plain: RackRow = {
  chalk: '1',
  species: 'cherry, black',
  thickness: { quarters: 8 },
  width: 158.75,
  length: 2438.4,
  moisture: 8.5,
  state: '',
};

describe('writeRackCsv', () => {
  it('names the unit in the header and writes plain numbers', () => {
    const tapered: RackRow = { ...plain, chalk: '2', thickness: { mm: 27.4 }, farWidth: 150, note: '=1+1' };
    expect(writeRackCsv([plain, tapered], 'in')).toBe(
      'chalk mark,species,thickness (quarters),thickness (in),width (in),far width (in),length (in),moisture (%),state,note\r\n' +
        '1,"cherry, black",8,,6.25,,96,8.5,,\r\n' +
        `2,"cherry, black",,1.078740157,6.25,5.905511811,96,8.5,,'=1+1\r\n`,
    );
    expect(writeRackCsv([plain], 'mm')).toContain('1,"cherry, black",8,,158.75,,2438.4,8.5,,\r\n');
  });
});

describe('parseRackCsv', () => {
  const length = (least: number, most: number) =>
    fc.oneof(
      fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => tenths / 10),
      fc.integer({ min: Math.ceil(least * 2.6), max: Math.floor(most * 2.5) }).map((parts) => (parts * 25.4) / 64),
    );
  const note = fc
    .oneof(
      fc.string(),
      fc.array(fc.constantFrom('=', '"', "'", ',', ';', '\r\n', '\t', ' ', 'x', '-'), { maxLength: 8 }),
    )
    .map((text) => (typeof text === 'string' ? text : text.join('')).trim());
  const anyRow: fc.Arbitrary<RackRow> = fc.record(
    {
      chalk: fc.constant(''),
      species: fc.constantFrom('cherry, black', 'maple, red', '-"odd" one', 'Ahorn, weiß'),
      thickness: fc.oneof(
        fc.record({ quarters: fc.constantFrom(2.5, 3, 4, 5, 6, 8, 12, 16) }),
        fc.record({ mm: length(3, 160) }),
      ),
      width: length(10, 1500),
      farWidth: length(10, 1500),
      length: length(50, 12_200),
      moisture: fc.integer({ min: 0, max: 600 }).map((tenths) => tenths / 10),
      state: note,
      note: note.filter((text) => text !== ''),
    },
    { requiredKeys: ['chalk', 'species', 'thickness', 'width', 'length', 'state'] },
  );

  it('gives every board back, in inches and in millimetres', () => {
    fc.assert(
      fc.property(fc.array(anyRow, { maxLength: 20 }), fc.constantFrom('in', 'mm'), (rows, unit) => {
        const marked = rows.map((row, index) => ({ ...row, chalk: `A${index}` }));
        const file = read(writeRackCsv(marked, unit));
        expect(file.problems).toEqual([]);
        // Lengths are kept to a millionth of a millimetre: 1/64 in is 0.396875 mm, so nothing is lost but binary noise.
        const clean = (value: unknown) =>
          JSON.parse(
            JSON.stringify(value, (_, part) => (typeof part === 'number' ? Math.round(part * 1e6) / 1e6 : part)),
          );
        expect(clean(file.rows.map(({ row }) => row))).toEqual(clean(marked));
      }),
    );
  });

  // Outside check: csv-parse, a general CSV reader, held to RFC 4180 (CRLF, double quotes, as many cells in every record).
  it('is written so that another reader finds the same cells', () => {
    const same = outsideCases({
      what: 'cells of a written rack, read back',
      source: 'csv-parse',
      cases: 'random racks of up to 20 boards',
    });
    fc.assert(
      fc.property(fc.array(anyRow, { maxLength: 20 }), fc.constantFrom('in', 'mm'), (rows, unit) => {
        const text = writeRackCsv(rows, unit);
        same(
          readCsv(text).map(({ cells }) => cells),
          parse(text, { record_delimiter: '\r\n' }),
        );
      }),
    );
  });

  it('takes columns in any order, fractions, other units, semicolons, and names what it ignores', () => {
    const file = read(
      '\ufeffLength (mm);WIDTH (in);Species;price;Thickness (quarters)\n2438,4;6 1/4;cherry;12;8/4\n96 in;5,75;oak;;4',
    );
    expect(file.ignored).toEqual(['price']);
    expect(file.problems).toEqual([]);
    expect(file.rows.map(({ row }) => [row.length, row.width, row.thickness])).toEqual([
      [2438.4, 158.75, { quarters: 8 }],
      [2438.4, 146.05, { quarters: 4 }],
    ]);
  });

  const header =
    'chalk mark,species,thickness (quarters),thickness (mm),width (mm),far width (mm),length (mm),moisture (%)\n';

  it('says line by line what is wrong, and keeps the good lines', () => {
    const text =
      `${header}1,cherry,8,,200,,2400,8\n` +
      '2,cherry,8,,two,,2400,8\n' +
      '3,,8,,200,,27432,8\n' +
      '4,cherry,8,27,200,,2400,8\n' +
      '5,cherry,,,200,,2400,8\n' +
      '6,cherry,8,,200,0,2400,101\n' +
      '7,cherry\n' +
      '8,black, cherry,8,,200,,2400,8\n' +
      '9,ch\ufffdrry,8,,200,,2400,8\n' +
      '1a,cherry,8,,210,,2400,\n' +
      ',,,,,,,\n' +
      '10,"cherry"s,8,,200,,2400,8\n' +
      '11,cherry,x,,200,,2400,wet\n' +
      '12,cherry,8,,200,,27432,8\n' +
      '13,cherry,8,,200,2,2400,8\n' +
      '14,"cherry,8,,200,,2400,8';
    expect(read(text).rows).toMatchObject([
      { line: 2, row: { chalk: '1', width: 200, moisture: 8 } },
      { line: 11, row: { chalk: '1a', width: 210 } },
    ]);
    expect(complaints(text).map((line) => line.split(':')[0])).toEqual([
      '3 width',
      '4 length',
      '4 species',
      '5 thickness',
      '6 thickness',
      '7 far width',
      '7 moisture',
      '8 thickness',
      '8 width',
      '8 length',
      '9 ',
      '10 ',
      '13 ',
      '14 thickness',
      '14 moisture',
      '15 length',
      '16 far width',
      '17 ',
    ]);
  });

  it.each([
    ['', '', 'empty'],
    ['s\0p\0', '', 'UTF-8'],
    ['name,size\nx,1', 'header', 'species, thickness, width, length'],
    ['species,width (mm),length (mm)', 'header', 'thickness'],
    ['species,thickness (mm),width,length (mm)', 'header', 'must say its unit'],
    ['species,thickness (mm),width (cm),length (mm)', 'header', 'must say its unit'],
    ['species,thickness (mm),width (mm),width (in),length (mm)', 'header', 'twice'],
  ])('refuses the file %j', (text, field, words) => {
    const file = parseRackCsv(text);
    expect(file).toMatchObject({ kind: 'problem', field });
    expect(isProblem(file) && file.message.text).toContain(words);
  });

  it('reads 20,000 boards, and refuses more lines or more text than any rack has', () => {
    const rows = Array.from({ length: 20_000 }, (_, index) => ({ ...plain, chalk: String(index) }));
    expect(read(writeRackCsv(rows, 'in')).rows.length).toBe(20_000);
    for (const text of [
      writeRackCsv([...rows, plain], 'in'),
      `${writeRackCsv([plain], 'in')}${'\n'.repeat(4_000_000)}`,
    ])
      expect(parseRackCsv(text)).toBe(tooLarge);
  });
});
