import { parseNumber } from '../answer/parse-number.ts';
import { isProblem, type Outcome, type Problem, problem } from '../answer/problem.ts';
import { parseLength } from '../length/parse-length.ts';
import type { Board } from './board.ts';
import { checkBoard } from './check-board.ts';

/** A board's sizes as they are written: one thickness of the two, and the far width of a tapered one. */
export interface WrittenSizes {
  readonly quarters?: string | undefined;
  readonly thickness?: string | undefined;
  readonly width: string;
  readonly farWidth?: string | undefined;
  readonly length: string;
}

export type SizeField = keyof WrittenSizes;

export interface ReadSizes {
  /** In mm, to a millionth. To be used when there is no problem. */
  readonly sizes: Board;
  /** What is wrong, by field. */
  readonly problems: ReadonlyMap<SizeField, Problem>;
}

/**
 * Reads a board's sizes, from an entry or from a list.
 *
 * @param written texts: quarters like 8 or 8/4, lengths in any way that `parseLength` takes
 * @param unitOf what a bare number in a field means
 * @returns sizes in mm, and a problem for each field that can't be read or can't be (`checkBoard`)
 * @valid any texts
 * @example readSizes({ quarters: '8/4', width: '6 1/4', length: '96' }, () => 'in').sizes
 *   // => { width: 158.75, length: 2438.4 }
 * @source 1 in = 25.4 mm exactly, NIST SP 811
 */
export function readSizes(written: WrittenSizes, unitOf: (field: SizeField) => 'in' | 'mm'): ReadSizes {
  const problems = new Map<SizeField, Problem>();
  const note = (field: SizeField, found: Problem) => problems.has(field) || problems.set(field, { ...found, field });
  const read = (field: SizeField, got: Outcome<number>): number => {
    if (!isProblem(got)) return Math.round(got * 1e6) / 1e6;
    note(field, got);
    return Number.NaN;
  };
  const length = (field: SizeField) => read(field, parseLength(written[field] ?? '', unitOf(field)));
  const { quarters, thickness, farWidth } = written;
  if ((quarters === undefined) === (thickness === undefined))
    note('thickness', problem('', 'Give one thickness: in quarters or measured.'));
  const sizes: Board = {
    thickness:
      quarters === undefined
        ? { mm: length('thickness') }
        : { quarters: read('quarters', parseNumber(quarters.replace(/ ?\/ ?4$/, ''))) },
    width: length('width'),
    ...(farWidth !== undefined && { farWidth: length('farWidth') }),
    length: length('length'),
  };
  for (const found of checkBoard(sizes)) note(found.field as SizeField, found);
  return { sizes, problems };
}
