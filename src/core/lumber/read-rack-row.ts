import { badNumber } from '../answer/bad-number.ts';
import { checked } from '../answer/checked.ts';
import { parseNumber } from '../answer/parse-number.ts';
import { isProblem, type Outcome, type Problem, problem } from '../answer/problem.ts';
import { unguardFormula } from '../csv/formula-guard.ts';
import type { CsvRow } from '../csv/read-csv.ts';
import { parseLength } from '../length/parse-length.ts';
import type { Thickness } from './board.ts';
import { checkBoard } from './check-board.ts';
import type { RackField, RackHeader } from './rack-header.ts';
import type { RackRow } from './rack-row.ts';

/**
 * Reads one line of a rack list.
 *
 * @param csv the line's cells
 * @param header which column is which
 * @returns the board, lengths in mm to a millionth; or everything that is wrong with the line, fields named as in the
 *   header
 * @valid any cells
 * @example readRackRow(
 *   { line: 2, cells: ['cherry', '8', '6 1/4', '96'] },
 *   readRackHeader(['species', 'thickness (quarters)', 'width (in)', 'length (in)']),
 * ) // => { width: 158.75, length: 2438.4 }
 * @source this app's own columns (`write-rack-csv.ts`)
 */
export function readRackRow(csv: CsvRow, header: RackHeader): RackRow | Problem[] {
  const whole = brokenLine(csv, header);
  if (whole) return [whole];
  const problems: Problem[] = [];
  const text = (field: RackField) => unguardFormula(csv.cells[header.columns[field]?.index ?? -1] ?? '').trim();
  function read<T>(field: RackField, how: (cell: string) => Outcome<T>): T | undefined {
    const cell = text(field);
    if (cell === '') return undefined;
    const found = how(cell);
    if (!isProblem(found)) return found;
    problems.push({ ...found, field });
    return undefined;
  }
  const length = (field: RackField) => read(field, (cell) => readLength(cell, header.columns[field]?.unit ?? 'mm'));

  const quarters = read('quarters', readQuarters);
  const measured = length('thickness');
  const width = length('width');
  const farWidth = length('far width');
  const boardLength = length('length');
  const moisture = read('moisture', readMoisture);
  for (const field of ['species', 'width', 'length'] as const) {
    if (text(field) === '') problems.push(problem(field, `The ${field} is missing.`));
  }
  if ((text('quarters') === '') === (text('thickness') === ''))
    problems.push(problem('thickness', 'Give one thickness: in quarters or measured.'));
  if (problems.length > 0) return problems;

  const row: RackRow = {
    chalkMark: text('chalk mark'),
    species: text('species'),
    thickness: (quarters === undefined ? { mm: measured } : { quarters }) as Thickness,
    width: width as number,
    ...(farWidth !== undefined && { farWidth }),
    length: boardLength as number,
    ...(moisture !== undefined && { moisture }),
    state: text('state'),
    note: text('note'),
  };
  const bad = checkBoard(row).map((found) => (found.field === 'farWidth' ? { ...found, field: 'far width' } : found));
  return bad.length > 0 ? bad : row;
}

/** No word, size or note of a board is longer than this: a backup keeps no longer one either. */
const mostLetters = 10_000;

/** Whether a cell holds more than any word of a board. */
export const isTooLong = (cell: string): boolean => cell.length > mostLetters;

function brokenLine({ broken, cells }: CsvRow, header: RackHeader): Problem | undefined {
  if (broken === 'open-quote') return problem('', 'A quote never closes: nothing after it could be read.');
  if (broken === 'text-after-quote') return problem('', 'Text after a closing quote.');
  if (cells.some(isTooLong)) return problem('', `A cell has more than ${mostLetters} letters.`);
  if (cells.slice(header.width).some((cell) => cell.trim() !== ''))
    return problem('', 'More cells than columns. Put a text with a comma in quotes.');
  if (cells.some((cell) => cell.includes('\ufffd')))
    return problem('', 'Some letters can’t be read. Save it as CSV in UTF-8.');
  return undefined;
}

function readLength(cell: string, unit: 'in' | 'mm'): Outcome<number> {
  const mm = parseLength(cell, unit);
  return isProblem(mm) ? mm : Math.round(mm * 1e6) / 1e6;
}

const readQuarters = (cell: string) => parseNumber(cell.replace(/ ?\/ ?4$/, ''));

const readMoisture = (cell: string) =>
  checked(parseNumber(cell.replace(/ ?%$/, '')), (moisture) =>
    badNumber('', 'The moisture', moisture, 'percent', { least: 0, most: 200 }),
  );
