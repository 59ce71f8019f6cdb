import { narrowestWidth } from '../../core/lumber/board-width.ts';
import { roughThickness } from '../../core/lumber/quarters.ts';
import type { Board } from '../../store/records/board.ts';
import { speciesName } from '../../ui/species-name.ts';
import { latestReading } from './corrected-readings.ts';

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

const names = new Map<string, string>();

/** Every word is somewhere in the board's mark, wood or note. */
function matches({ chalk, species, note = '' }: Board, words: readonly string[]): boolean {
  const name = names.get(species) ?? speciesName(species);
  names.set(species, name);
  const text = `${chalk} ${name} ${note}`.toLowerCase();
  return words.every((word) => text.includes(word));
}

/** The latest moisture, corrected; a board without a reading counts as wet. */
export const latestMoisture = (board: Board): number => latestReading(board)?.percent ?? Number.POSITIVE_INFINITY;

/** A size typed to the last digit must not shut out a board of that very size. */
const noise = 0.06;

/** The boards that pass, in the order they came. */
export function filterRack(boards: readonly Board[], filter: RackFilter): Board[] {
  const words = filter.search.toLowerCase().split(/\s+/).filter(Boolean);
  const { species, state, width = 0, length = 0, thickness = 0, driestAt } = filter;
  return boards.filter(
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
}

const keys: Record<Exclude<SortBy, 'newest' | 'mark'>, (board: Board) => number> = {
  widest: (board) => -narrowestWidth(board),
  longest: (board) => -board.length,
  thickest: (board) => -roughThickness(board.thickness),
  driest: latestMoisture,
};

/** Boards in the order wanted; they come in the order they were logged. */
export function sortRack(boards: readonly Board[], sort: SortBy): Board[] {
  if (sort === 'newest') return boards.toReversed();
  if (sort === 'mark') {
    // One collator for all: making one for each comparison takes longer than the comparison.
    const { compare } = new Intl.Collator(undefined, { numeric: true });
    return boards.toSorted((a, b) => compare(a.chalk, b.chalk));
  }
  const keyed = boards.map((board) => ({ board, key: keys[sort](board) }));
  return keyed.sort((a, b) => (a.key < b.key ? -1 : Number(a.key > b.key))).map(({ board }) => board);
}
