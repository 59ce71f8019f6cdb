import { guardFormula } from './formula-guard.ts';

/**
 * Writes CSV. Cells that a spreadsheet would run as a formula are made harmless (`guardFormula`).
 *
 * @param rows cells as plain text
 * @returns the file's text: lines end with CRLF, cells are put in quotes where they must or better be
 * @valid any text; a row with one empty cell is written as ""
 * @example writeCsv([['a', 'b "c"']]) // => 'a,"b ""c"""\r\n'
 * @source RFC 4180 section 2
 */
export function writeCsv(rows: readonly (readonly string[])[]): string {
  return rows
    .map((cells) => `${cells.length === 1 && cells[0] === '' ? '""' : cells.map(writeCell).join(',')}\r\n`)
    .join('');
}

function writeCell(cell: string): string {
  const safe = guardFormula(cell);
  return /[",;\r\n\t]|^\s|\s$/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
