import { type Outcome, problem } from '../answer/problem.ts';

/** What a rack list can say about a board. The names in the header, units aside. */
const rackFields = [
  'chalk mark',
  'species',
  'quarters',
  'thickness',
  'width',
  'far width',
  'length',
  'moisture',
  'state',
  'note',
] as const;
export type RackField = (typeof rackFields)[number];

export interface RackColumn {
  readonly index: number;
  /** What a bare number in it means; `mm` where it is no length. */
  readonly unit: 'in' | 'mm';
}

export interface RackHeader {
  readonly columns: Partial<Readonly<Record<RackField, RackColumn>>>;
  /** Columns that are none of ours, as they are written. */
  readonly ignored: readonly string[];
  readonly width: number;
}

const lengths: readonly string[] = ['thickness', 'width', 'far width', 'length'] satisfies RackField[];

/**
 * Finds out which column is which.
 *
 * @param cells the header's cells, capitals and extra blanks aside
 * @returns columns by what they hold, and those that are ignored
 * @valid any cells
 * @errors (field `header`): a length without `(mm)` or `(in)`, a column twice, no species, width, length or thickness
 * @example readRackHeader(['species', 'thickness (quarters)', 'width (in)', 'length (in)', 'price'])
 *   // => { ignored: ['price'] }
 * @source this app's own columns (`write-rack-csv.ts`)
 */
export function readRackHeader(cells: readonly string[]): Outcome<RackHeader> {
  const columns: Partial<Record<RackField, RackColumn>> = {};
  const ignored: string[] = [];
  for (const [index, cell] of cells.entries()) {
    const plain = cell.replace(/\s+/g, ' ').trim().toLowerCase();
    const [, name = '', unit = ''] = /^([^(]*?) ?(?:\(([^)]*)\))?$/.exec(plain) ?? [];
    const field = fieldOf(name, unit);
    if (field === undefined) {
      if (plain !== '') ignored.push(cell.trim());
      continue;
    }
    if (lengths.includes(field) && unit !== 'mm' && unit !== 'in')
      return problem('header', `The column “${cell.trim()}” must say its unit: ${name} (mm) or ${name} (in).`);
    if (columns[field]) return problem('header', `The column “${name}” is there twice. Keep one.`);
    columns[field] = { index, unit: unit === 'in' ? 'in' : 'mm' };
  }
  const missing = (['species', 'width', 'length'] as const).filter((field) => !columns[field]);
  if (missing.length > 0)
    return problem(
      'header',
      `No column for ${missing.join(', ')}. The first line must name the columns, like: width (mm).`,
    );
  if (!columns.quarters && !columns.thickness)
    return problem('header', 'No column for the thickness: thickness (quarters), thickness (mm) or thickness (in).');
  return { columns, ignored, width: cells.length };
}

function fieldOf(name: string, unit: string): RackField | undefined {
  if (name === 'thickness' && unit === 'quarters') return 'quarters';
  return rackFields.find((field) => field === name && field !== 'quarters');
}
