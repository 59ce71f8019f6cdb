import { badNumber } from '../answer/bad-number.ts';
import { checked } from '../answer/checked.ts';
import { parseNumber } from '../answer/parse-number.ts';
import { isProblem, type Problem, problem } from '../answer/problem.ts';
import { unguardFormula } from '../csv/formula-guard.ts';
import type { CsvRow } from '../csv/read-csv.ts';
import { type RackField, type RackRow, rackColumns } from './rack-columns.ts';
import type { RackHeader } from './rack-header.ts';
import { readSizes } from './read-sizes.ts';

/** No word, size or note of a board is longer than this: a backup keeps no longer one either. */
const mostLetters = 10_000;

/** Whether a cell holds more than any word of a board. */
export const isTooLong = (cell: string): boolean => cell.length > mostLetters;

export const notUtf8 = problem('', 'Some letters can’t be read. Save it as CSV in UTF-8.');

/**
 * Reads one line of a rack list.
 *
 * @param csv the line's cells
 * @param header which column is which
 * @returns the board, lengths in mm; or everything that is wrong with the line, fields named as in the header
 * @valid any cells
 * @example readRackRow(
 *   { line: 2, cells: ['cherry', '8', '6 1/4', '96'] },
 *   readRackHeader(['species', 'thickness (quarters)', 'width (in)', 'length (in)']),
 * ) // => { row: { width: 158.75, length: 2438.4 } }
 * @source this app's own columns (`rack-columns.ts`)
 */
export function readRackRow(csv: CsvRow, { columns, width }: RackHeader): { row: RackRow } | { problems: Problem[] } {
  const broken = brokenLine(csv, width);
  if (broken) return { problems: [broken] };
  const text = (field: RackField) => unguardFormula(csv.cells[columns[field]?.index ?? -1] ?? '').trim();
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

const badMoisture = (percent: number) => badNumber('', 'The moisture', percent, 'percent', { least: 0, most: 100 });

function brokenLine({ broken, cells }: CsvRow, width: number): Problem | undefined {
  if (broken === 'open-quote') return problem('', 'A quote never closes: nothing after it could be read.');
  if (broken === 'text-after-quote') return problem('', 'Text after a closing quote.');
  if (cells.some(isTooLong)) return problem('', `A cell has more than ${mostLetters} letters.`);
  if (cells.slice(width).some((cell) => cell.trim() !== ''))
    return problem('', 'More cells than columns. Put a text with a comma in quotes.');
  return cells.some((cell) => cell.includes('\ufffd')) ? notUtf8 : undefined;
}
