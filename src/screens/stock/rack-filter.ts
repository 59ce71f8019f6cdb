import { narrowestWidth } from '../../core/lumber/board-width.ts';
import { roughThickness } from '../../core/lumber/quarters.ts';
import type { Board } from '../../store/records/board.ts';
import { speciesName } from '../../ui/species-name.ts';
import { correctedReadings } from './corrected-readings.ts';

export type SortBy = 'newest' | 'mark' | 'widest' | 'longest' | 'thickest' | 'driest';

/** Which boards to show, and in what order. Sizes in mm, moisture in percent; what is left out doesn't matter. */
export interface RackFilter {
  readonly search: string;
  readonly species: string;
  /** `have` are those in the rack or set aside. */
  readonly state: 'have' | 'all' | Board['state'];
  readonly width?: number | undefined;
  readonly length?: number | undefined;
  readonly thickness?: number | undefined;
  readonly driestAt?: number | undefined;
  readonly sort: SortBy;
}

export const wholeRack: RackFilter = { search: '', species: '', state: 'have', sort: 'newest' };

const texts = new WeakMap<Board, string>();
const names = new Map<string, string>();

function textOf(board: Board): string {
  const known = texts.get(board);
  if (known !== undefined) return known;
  const name = names.get(board.species) ?? speciesName(board.species);
  names.set(board.species, name);
  const text = `${board.chalk} ${name} ${board.note ?? ''}`.toLowerCase();
  texts.set(board, text);
  return text;
}

const moistures = new WeakMap<Board, number>();

/** The latest moisture, corrected; a board without a reading counts as wet. */
export function latestMoisture(board: Board): number {
  if (!board.readings?.length) return Number.POSITIVE_INFINITY;
  const known = moistures.get(board);
  if (known !== undefined) return known;
  const found = correctedReadings(board.readings).at(-1)?.percent ?? Number.POSITIVE_INFINITY;
  moistures.set(board, found);
  return found;
}

const compare: Record<Exclude<SortBy, 'newest' | 'mark'>, (a: Board, b: Board) => number> = {
  widest: (a, b) => narrowestWidth(b) - narrowestWidth(a),
  longest: (a, b) => b.length - a.length,
  thickest: (a, b) => roughThickness(b.thickness) - roughThickness(a.thickness),
  driest: (a, b) => (latestMoisture(a) === latestMoisture(b) ? 0 : latestMoisture(a) - latestMoisture(b)),
};

/** A size typed to the last digit must not shut out a board of that very size. */
const noise = 0.06;

/** The boards that pass, sorted. `boards` are in the order they were logged. */
export function filterRack(boards: readonly Board[], filter: RackFilter): Board[] {
  const words = filter.search
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const { species, state, width = 0, length = 0, thickness = 0, driestAt } = filter;
  const found = boards.filter(
    (board) =>
      (state === 'all' ||
        (state === 'have' ? board.state === 'rack' || board.state === 'setAside' : board.state === state)) &&
      (species === '' || board.species === species) &&
      narrowestWidth(board) >= width - noise &&
      board.length >= length - noise &&
      roughThickness(board.thickness) >= thickness - noise &&
      (driestAt === undefined || latestMoisture(board) <= driestAt) &&
      (words.length === 0 || matches(board, words)),
  );
  return filter.sort === 'newest' ? found.reverse() : found.sort(sorter(filter.sort));
}

function sorter(sort: Exclude<SortBy, 'newest'>): (a: Board, b: Board) => number {
  if (sort !== 'mark') return compare[sort];
  // One collator for all: making one for each comparison takes longer than the comparison.
  const collator = new Intl.Collator(undefined, { numeric: true });
  return (a, b) => collator.compare(a.chalk, b.chalk);
}

/** Every word is somewhere in the board's text. */
function matches(board: Board, words: readonly string[]): boolean {
  const text = textOf(board);
  return words.every((word) => text.includes(word));
}
