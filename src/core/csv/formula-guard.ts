/**
 * What a spreadsheet takes for a formula: one of these at the beginning of a cell, quotes and blanks aside. One run of
 * them, so that a long one is gone through once.
 */
const formula = /^['"\s]*[=+\-@\uff1d\uff0b\uff0d\uff20]/;

/**
 * Where a spreadsheet may part cells, set up for another country or confused by quotes: what stands behind could come
 * to begin a cell.
 */
const separators = /([,;\t\r\n])/;

/**
 * Puts an apostrophe before whatever a spreadsheet could run as a formula.
 *
 * @param cell a cell's text
 * @returns the text, harmless in a spreadsheet
 * @valid any text; `unguardFormula` gives it back
 * @example ['=1+1', '8/4 cherry'].map(guardFormula) // => ["'=1+1", '8/4 cherry']
 * @source common practice against formula injection
 */
export function guardFormula(cell: string): string {
  return eachPiece(cell, (piece) => (formula.test(piece) ? `'${piece}` : piece));
}

/**
 * Takes off what `guardFormula` put on: `unguardFormula(guardFormula(cell))` is the cell again, whatever it holds.
 *
 * @param cell a cell's text
 * @returns the text as it was
 * @valid any text that `guardFormula` gave
 * @example unguardFormula("'=1+1") // => '=1+1'
 * @source common practice against formula injection
 */
export function unguardFormula(cell: string): string {
  return eachPiece(cell, (piece) => (piece.startsWith("'") && formula.test(piece.slice(1)) ? piece.slice(1) : piece));
}

function eachPiece(cell: string, change: (piece: string) => string): string {
  return separators.test(cell) ? cell.split(separators).map(change).join('') : change(cell);
}
