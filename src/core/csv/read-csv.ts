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
 * @param most no more records than this are read
 * @returns records in order, blank lines left out; a broken record is read as well as it can be and marked
 * @valid any text; the time goes with its length, whatever it holds
 * @example readCsv('a,"b ""c"""\r\n') // => [{ cells: ['a', 'b "c"'] }]
 * @source RFC 4180 section 2
 */
export function readCsv(text: string, separator = ',', most = Number.POSITIVE_INFINITY): CsvRow[] {
  const rows: CsvRow[] = [];
  let at = text.startsWith('\ufeff') ? 1 : 0;
  const plain = (): string => {
    const from = at;
    while (at < text.length && text[at] !== separator && text[at] !== '\n' && text[at] !== '\r') at++;
    return text.slice(from, at);
  };
  let line = 1;
  while (at < text.length && rows.length < most) {
    const begins = line;
    const cells: string[] = [];
    let broken: CsvRow['broken'];
    let quotes = false;
    for (let more = true; more; ) {
      if (text[at] === '"') {
        quotes = true;
        const closing = closingQuote(text, at);
        const quoted = text.slice(at + 1, closing);
        at = closing + 1;
        const after = plain();
        cells.push(quoted.replaceAll('""', '"') + after);
        if (closing === text.length) broken ??= 'open-quote';
        else if (after !== '') broken ??= 'text-after-quote';
        line += countLineEnds(quoted);
      } else {
        cells.push(plain());
      }
      more = text[at] === separator;
      if (more) at++;
    }
    at += text.startsWith('\r\n', at) ? 2 : 1;
    line++;
    if (cells.length > 1 || cells[0] !== '' || quotes) rows.push({ line: begins, cells, ...(broken && { broken }) });
  }
  return rows;
}

/** Where the quote that opens at `from` closes; the end of the text where it never does. Two in a row stand for one. */
function closingQuote(text: string, from: number): number {
  for (let at = from + 1; ; at += 2) {
    at = text.indexOf('"', at);
    if (at < 0) return text.length;
    if (text[at + 1] !== '"') return at;
  }
}

function countLineEnds(text: string): number {
  return text.match(/\r\n|\n|\r/g)?.length ?? 0;
}
