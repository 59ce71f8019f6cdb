import { writeCsv } from '../csv/write-csv.ts';
import { mmPerInch } from '../length/length-unit-sizes.ts';
import { type RackRow, rackHeader } from './rack-columns.ts';

/**
 * Writes a rack list as CSV, one board a line, lengths as decimal numbers in the unit that the header names.
 *
 * Columns: chalk mark, species, thickness (quarters), thickness (mm), width (mm), far width (mm), length (mm), moisture
 * (%), state, note; with `in` in place of `mm` for inches. A board has its thickness either in quarters or measured.
 *
 * @param rows the boards, lengths in mm
 * @param unit of the lengths in the file
 * @returns the file's text, without byte order mark; no cell runs as a formula in a spreadsheet
 * @valid lengths of up to 12.2 m; `parseRackCsv` gives back every one that is a whole number of millionths of a
 *   millimetre
 * @example writeRackCsv([{ ...board, chalk: '1', species: 'cherry, black', moisture: 8.5, state: '' }], 'in').split(
 *   '\r\n',
 * )[1] // => '1,"cherry, black",8,,6.25,,96,8.5,,'
 * @source RFC 4180
 */
export function writeRackCsv(rows: readonly RackRow[], unit: 'in' | 'mm'): string {
  const length = (mm: number | undefined) =>
    mm === undefined ? '' : unit === 'mm' ? decimal(mm, 6) : decimal(mm / mmPerInch, 9);
  return writeCsv([
    rackHeader(unit),
    ...rows.map(({ chalk, species, thickness, width, farWidth, length: long, moisture, state, note = '' }) => [
      chalk,
      species,
      'quarters' in thickness ? String(thickness.quarters) : '',
      'mm' in thickness ? length(thickness.mm) : '',
      length(width),
      length(farWidth),
      length(long),
      moisture === undefined ? '' : decimal(moisture, 6),
      state,
      note,
    ]),
  ]);
}

function decimal(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)));
}
