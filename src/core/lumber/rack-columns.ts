import type { Board } from './board.ts';

/** One board as it goes out to and comes in from a rack list. */
export interface RackRow extends Board {
  /** Empty when it has none yet. */
  readonly chalk: string;
  readonly species: string;
  /** Percent. */
  readonly moisture?: number;
  /** In the rack, set aside, cut: in the words of whoever wrote it. */
  readonly state: string;
  readonly note?: string;
}

export interface Column {
  readonly name: string;
  readonly unit?: 'length' | 'quarters' | '%';
}

/** The columns of a rack list, in the order in which they are written; a length says its own unit in the header. */
export const rackColumns = {
  chalk: { name: 'chalk mark' },
  species: { name: 'species' },
  quarters: { name: 'thickness', unit: 'quarters' },
  thickness: { name: 'thickness', unit: 'length' },
  width: { name: 'width', unit: 'length' },
  farWidth: { name: 'far width', unit: 'length' },
  length: { name: 'length', unit: 'length' },
  moisture: { name: 'moisture', unit: '%' },
  state: { name: 'state' },
  note: { name: 'note' },
} as const satisfies Record<string, Column>;

export type RackField = keyof typeof rackColumns;

/**
 * The first line of a rack list: its columns, each with its unit.
 *
 * @param unit of the lengths in the list
 * @returns the names of the columns, in order
 * @valid either unit
 * @example rackHeader('mm').join('; ')
 *   // => 'chalk mark; species; thickness (quarters); thickness (mm); width (mm); far width (mm); length (mm); moisture (%); state; note'
 * @source this app's own columns
 */
export const rackHeader = (unit: 'in' | 'mm'): string[] =>
  Object.values<Column>(rackColumns).map((column) =>
    column.unit ? `${column.name} (${column.unit === 'length' ? unit : column.unit})` : column.name,
  );
