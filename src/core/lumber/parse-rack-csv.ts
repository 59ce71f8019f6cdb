import { badNumber } from '../answer/bad-number.ts';
import { checked } from '../answer/checked.ts';
import { parseNumber } from '../answer/parse-number.ts';
import { isProblem, type Outcome, type Problem, problem } from '../answer/problem.ts';
import { unguardFormula } from '../csv/formula-guard.ts';
import { type CsvRow, readCsv } from '../csv/read-csv.ts';
import { type RackField, type RackRow, rackColumns } from './rack-columns.ts';
import { type RackHeader, readRackHeader } from './rack-header.ts';
import { readSizes } from './read-sizes.ts';

/** What is wrong with a line of the file, counted from 1. */
export interface LineProblem {
  readonly line: number;
  readonly problem: Problem;
}

export interface RackFile {
  readonly rows: readonly { readonly line: number; readonly row: RackRow }[];
  /** What is wrong; such lines are not among the rows. */
  readonly problems: readonly LineProblem[];
  /** Columns that are none of ours. */
  readonly ignored: readonly string[];
}

/** More than this is no list of one shop's rack, and would hold up the phone: records, and characters of text. */
const mostRows = 20_000;
const mostColumns = 100;
export const mostText = 2_000_000;

/** No word, size or note of a board is longer than this: a backup keeps no longer one either. */
const mostLetters = 10_000;
const isTooLong = (cell: string) => cell.length > mostLetters;

const notUtf8 = problem('', 'Some letters can’t be read. Save it as CSV in UTF-8.');
export const tooLarge = problem('', `More than ${mostRows} lines or ${mostText / 1e6} MB. Split the list.`);

/**
 * Reads a rack list (`writeRackCsv`), or one made elsewhere with the same column names in any order. Cells are parted
 * by commas; semicolons and tabs are recognised too. Lengths may be written in any way that `parseLength` takes.
 *
 * @param text the file's text
 * @returns boards with lengths in mm, and problems line by line; nothing is guessed
 * @valid files of up to 20 000 records and 2 million characters
 * @errors an empty file (field ''), one that is larger, one that isn't UTF-8 text,
 *   a header that is not ours (field `header`)
 * @example parseRackCsv('species,thickness (quarters),width (in),length (in)\ncherry,8,6 1/4,96').rows
 *   // => [{ row: { width: 158.75, length: 2438.4 } }]
 * @source RFC 4180
 */
export function parseRackCsv(text: string): Outcome<RackFile> {
  if (text.length > mostText) return tooLarge;
  if (text.includes('\0')) return notUtf8;
  const [header, ...lines] = readCsv(text, separatorOf(text), mostRows + 2);
  if (lines.length > mostRows) return tooLarge;
  if (!header) return problem('', 'The file is empty.');
  if (header.cells.length > mostColumns || header.cells.some(isTooLong))
    return problem('header', 'The first line must name the columns, like: width (mm).');
  const columns = readRackHeader(header.cells.map(unguardFormula));
  if (isProblem(columns)) return columns;
  const rows: RackFile['rows'][number][] = [];
  const problems: LineProblem[] = [];
  for (const csv of lines) {
    const { line, cells } = csv;
    if (cells.every((cell) => cell.trim() === '')) continue;
    const broken = brokenLine(csv, header.cells.length);
    const read = broken ? { problems: [broken] } : readRow(cells, columns);
    if ('row' in read) rows.push({ line, row: read.row });
    else problems.push(...read.problems.map((found) => ({ line, problem: found })));
  }
  return { rows, problems, ignored: columns.ignored };
}

/** The board of a line, or everything that is wrong with it, fields named as in the header. */
function readRow(cells: readonly string[], { columns }: RackHeader): { row: RackRow } | { problems: Problem[] } {
  const text = (field: RackField) => unguardFormula(cells[columns[field]?.index ?? -1] ?? '').trim();
  const given = (field: RackField) => text(field) || undefined;
  const { sizes, problems } = readSizes(
    {
      quarters: given('quarters'),
      thickness: given('thickness'),
      width: text('width'),
      farWidth: given('farWidth'),
      length: text('length'),
    },
    (field) => columns[field]?.unit ?? 'mm',
  );
  const found: Problem[] = [...problems].map(([field, wrong]) => ({ ...wrong, field: rackColumns[field].name }));
  const [species, note, percent] = [text('species'), text('note'), given('moisture')];
  if (species === '') found.push(problem('species', 'The species is missing.'));
  const moisture = percent === undefined ? undefined : checked(parseNumber(percent.replace(/ ?%$/, '')), badMoisture);
  if (isProblem(moisture)) found.push({ ...moisture, field: 'moisture' });
  if (found.length > 0 || isProblem(moisture)) return { problems: found };
  return {
    row: {
      chalk: text('chalk'),
      species,
      ...sizes,
      ...(moisture !== undefined && { moisture }),
      state: text('state'),
      ...(note !== '' && { note }),
    },
  };
}

const badMoisture = (percent: number) => badNumber('', 'The moisture', percent, 'percent', { least: 0, most: 200 });

function brokenLine({ broken, cells }: CsvRow, width: number): Problem | undefined {
  if (broken === 'open-quote') return problem('', 'A quote never closes: nothing after it could be read.');
  if (broken === 'text-after-quote') return problem('', 'Text after a closing quote.');
  if (cells.some(isTooLong)) return problem('', `A cell has more than ${mostLetters} letters.`);
  if (cells.slice(width).some((cell) => cell.trim() !== ''))
    return problem('', 'More cells than columns. Put a text with a comma in quotes.');
  return cells.some((cell) => cell.includes('\ufffd')) ? notUtf8 : undefined;
}

/** The separator that the header line has most of. */
function separatorOf(text: string): string {
  const [header = ''] = text.split(/[\r\n]/, 1);
  const times = (separator: string) => header.split(separator).length;
  return [',', ';', '\t'].reduce((most, separator) => (times(separator) > times(most) ? separator : most));
}
