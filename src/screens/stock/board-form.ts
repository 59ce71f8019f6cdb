import { badNumber } from '../../core/answer/bad-number.ts';
import { checked } from '../../core/answer/checked.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { isProblem, type Problem, problem } from '../../core/answer/problem.ts';
import { readSizes, type SizeField } from '../../core/lumber/read-sizes.ts';
import type { Board } from '../../store/records/board.ts';

/** A board as it is typed; kept through a killed tab. A change of shape takes a new draft key. */
export interface BoardForm {
  /** Undefined as long as the proposed mark stands. */
  readonly chalk: string | undefined;
  readonly species: string;
  /** A number of quarters, or `measured`. */
  readonly thickness: string;
  readonly measured: string;
  readonly width: string;
  readonly tapers: boolean;
  readonly farWidth: string;
  readonly length: string;
  /** The length of the board before, as it was typed: taken where none is typed. */
  readonly lastLength: string;
  readonly alike: string;
  /** Id of the logged board that is being put right; empty for a new one. */
  readonly fixing: string;
  /** Whether logging it was tried: only then are its problems shown. */
  readonly tried: boolean;
}

/** The entries; `thickness` is the one for a measured thickness. */
export type BoardField = 'chalk' | 'species' | 'alike' | SizeField;

export type Sizes = Pick<Board, 'chalk' | 'species' | 'thickness' | 'width' | 'farWidth' | 'length'>;

export interface ReadBoard {
  /** The board and how many alike, when nothing is wrong with it. */
  readonly board?: Sizes;
  readonly alike?: number;
  readonly problems: ReadonlyMap<BoardField, Problem>;
}

const quarterNames = ['4', '5', '6', '8', '10', '12', '16'];

/** The thicknesses to choose from, with an uncommon one that is chosen already. */
export const thicknessOptions = (chosen: string): { value: string; label: string }[] =>
  [...new Set([...quarterNames, chosen, 'measured'])].map((value) => ({
    value,
    label: value === 'measured' ? 'Measured' : `${value}/4`,
  }));

/** Reads and checks what was typed; `unit` is what a bare number means, `isTaken` knows the other boards' marks. */
export function readBoardForm(
  form: BoardForm,
  proposedMark: string,
  isTaken: (mark: string) => boolean,
  unit: 'in' | 'mm',
): ReadBoard {
  const measured = form.thickness === 'measured';
  const { sizes, problems: ofSizes } = readSizes(
    {
      quarters: measured ? undefined : form.thickness,
      thickness: measured ? form.measured : undefined,
      width: form.width,
      farWidth: form.tapers ? form.farWidth : undefined,
      length: form.length.trim() || form.lastLength,
    },
    () => unit,
  );
  const problems = new Map<BoardField, Problem>(ofSizes);
  const chalk = (form.chalk ?? proposedMark).trim();
  if (chalk === '') problems.set('chalk', problem('chalk', 'Give it a mark, like C1.'));
  else if (form.chalk !== undefined && isTaken(chalk))
    problems.set('chalk', problem('chalk', 'Another board has this mark.'));
  if (form.species === '') problems.set('species', problem('species', 'Choose the wood.'));
  const alike = form.fixing === '' ? checked(parseNumber(form.alike), badCount) : 1;
  if (isProblem(alike)) problems.set('alike', alike);
  const board = { chalk, species: form.species, ...sizes };
  return isProblem(alike) || problems.size > 0 ? { problems } : { board, alike, problems };
}

const badCount = (count: number) =>
  badNumber('alike', 'The number of boards', count, 'count', { least: 1, most: 200, whole: true });

/** Marks are the same whatever their capitals and outer blanks. */
export const plainMark = (mark: string) => mark.trim().toUpperCase();

/** The form for the board after one of these: wood, thickness and length are those of the last. */
export function formAfter(last: BoardForm | undefined, species: string): BoardForm {
  return {
    chalk: undefined,
    species: last?.species ?? species,
    thickness: last?.thickness ?? '4',
    measured: last?.measured ?? '',
    width: '',
    tapers: false,
    farWidth: '',
    length: '',
    lastLength: last?.length.trim() || last?.lastLength || '',
    alike: '1',
    fixing: '',
    tried: false,
  };
}

/** A logged board back in the form, to be put right. */
export function formOf(board: Board, write: (mm: number) => string): BoardForm {
  const { thickness } = board;
  return {
    ...formAfter(undefined, board.species),
    chalk: board.chalk,
    thickness: 'quarters' in thickness ? String(thickness.quarters) : 'measured',
    measured: 'mm' in thickness ? write(thickness.mm) : '',
    width: write(board.width),
    tapers: board.farWidth !== undefined,
    farWidth: board.farWidth === undefined ? '' : write(board.farWidth),
    length: write(board.length),
    fixing: board.id,
  };
}
