import { isProblem, type Outcome, type Problem, problem } from '../answer/problem.ts';
import { unguardFormula } from '../csv/formula-guard.ts';
import { readCsv } from '../csv/read-csv.ts';
import type { RackRow } from './rack-columns.ts';
import { readRackHeader } from './rack-header.ts';
import { isTooLong, notUtf8, readRackRow } from './read-rack-row.ts';

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
    const { line } = csv;
    if (csv.cells.every((cell) => cell.trim() === '')) continue;
    const read = readRackRow(csv, columns);
    if ('row' in read) rows.push({ line, row: read.row });
    else problems.push(...read.problems.map((found) => ({ line, problem: found })));
  }
  return { rows, problems, ignored: columns.ignored };
}

/** The separator that the header line has most of. */
function separatorOf(text: string): string {
  const [header = ''] = text.split(/[\r\n]/, 1);
  const times = (separator: string) => header.split(separator).length;
  return [',', ';', '\t'].reduce((most, separator) => (times(separator) > times(most) ? separator : most));
}
