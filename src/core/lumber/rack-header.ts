import { type Outcome, problem } from '../answer/problem.ts';
import { type Column, type RackField, rackColumns } from './rack-columns.ts';

export interface RackColumn {
  readonly index: number;
  /** What a bare number in it means; `mm` where it is no length. */
  readonly unit: 'in' | 'mm';
}

export interface RackHeader {
  readonly columns: Partial<Readonly<Record<RackField, RackColumn>>>;
  /** Columns that are none of ours, as they are written. */
  readonly ignored: readonly string[];
  /** How many columns there are. */
  readonly width: number;
}

const fields = Object.entries<Column>(rackColumns) as [RackField, Column][];

/**
 * Finds out which column is which.
 *
 * @param cells the header's cells, capitals and extra blanks aside
 * @returns columns by what they hold, and those that are ignored
 * @valid any cells
 * @errors (field `header`): a length without `(mm)` or `(in)`, a column twice, no species, width, length or thickness
 * @example readRackHeader(['species', 'thickness (quarters)', 'width (in)', 'length (in)', 'price'])
 *   // => { ignored: ['price'] }
 * @source this app's own columns (`rack-columns.ts`)
 */
export function readRackHeader(cells: readonly string[]): Outcome<RackHeader> {
  const columns: Partial<Record<RackField, RackColumn>> = {};
  const ignored: string[] = [];
  for (const [index, cell] of cells.entries()) {
    const plain = cell.replace(/\s+/g, ' ').trim().toLowerCase();
    const [, name, unit] = /^([^(]*?) ?(?:\(([^)]*)\))?$/.exec(plain) ?? [];
    const [field, column] =
      fields.find(([, its]) => its.name === name && (its.unit === 'quarters') === (unit === 'quarters')) ?? [];
    if (!field) {
      if (plain !== '') ignored.push(cell.trim());
      continue;
    }
    if (column?.unit === 'length' && unit !== 'mm' && unit !== 'in')
      return problem('header', `The column “${cell.trim()}” must say its unit: ${name} (mm) or ${name} (in).`);
    if (columns[field]) return problem('header', `The column “${name}” is there twice. Keep one.`);
    columns[field] = { index, unit: unit === 'in' ? 'in' : 'mm' };
  }
  const missing = (['species', 'thickness', 'width', 'length'] as const).filter(
    (field) => !columns[field] && !(field === 'thickness' && columns.quarters),
  );
  return missing.length > 0
    ? problem('header', `No column for ${missing.join(', ')}. The first line must name the columns, like: width (mm).`)
    : { columns, ignored, width: cells.length };
}
