/** One record of a CSV file; `line` is where it begins, counted from 1. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
  /** The record can't be trusted: text stands after closing quotes, or quotes never close. */
  readonly broken?: 'text-after-quote' | 'open-quote';
}

/**
 * Reads CSV as RFC 4180 writes it, and a little more: any kind of line end, a byte order mark, another
 * separator, and quotes inside of plain text (an inch sign).
 *
 * @param text the file's text
 * @param separator what parts the cells
 * @returns records in order, blank lines left out; a broken record is read as well as it can be and marked
 * @valid any text
 * @example readCsv('a,"b ""c"""\r\n') // => [{ cells: ['a', 'b "c"'] }]
 * @source RFC 4180 section 2
 */
export function readCsv(text: string, separator = ','): CsvRow[] {
  const rows: CsvRow[] = [];
  // One match is one cell: its text, plain or in quotes, what stands after the quotes, and what ends it.
  const bare = `[^${separator}\\r\\n]*`;
  const cell = new RegExp(`(?:"([^"]*(?:""[^"]*)*)("?)(${bare})|(${bare}))(${separator}|\\r\\n|\\n|\\r|$)`, 'y');
  cell.lastIndex = text.startsWith('\ufeff') ? 1 : 0;
  let cells: string[] = [];
  let broken: CsvRow['broken'];
  let line = 1;
  let begins = 1;
  while (cell.lastIndex < text.length || cells.length > 0) {
    const found = cell.exec(text);
    if (!found) break;
    const [, quoted, closing, after = '', plain = '', end = ''] = found;
    if (quoted === undefined) {
      cells.push(plain);
    } else {
      cells.push(quoted.replaceAll('""', '"') + after);
      if (closing === '') broken ??= 'open-quote';
      else if (after !== '') broken ??= 'text-after-quote';
      line += countLineEnds(quoted);
    }
    if (end === separator) continue;
    if (cells.length > 1 || cells[0] !== '' || quoted !== undefined)
      rows.push({ line: begins, cells, ...(broken && { broken }) });
    cells = [];
    broken = undefined;
    begins = ++line;
  }
  return rows;
}

function countLineEnds(text: string): number {
  return text.match(/\r\n|\n|\r/g)?.length ?? 0;
}
