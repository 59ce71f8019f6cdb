import type { FormRead } from '../../app/form.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import { checked } from '../../core/answer/checked.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { isProblem, type Outcome, type Problem, problem } from '../../core/answer/problem.ts';
import { formatLength } from '../../core/length/format-length.ts';
import type { LengthUnits } from '../../core/length/length-units.ts';
import type { Thickness } from '../../core/lumber/board.ts';
import { nextChalkMark } from '../../core/lumber/chalk-mark.ts';
import { roughThickness } from '../../core/lumber/quarters.ts';
import { readSizes } from '../../core/lumber/read-sizes.ts';
import type { Board } from '../../store/records/board.ts';
import { chosenWood } from '../../ui/species-pick.tsx';

/** A board as it is typed. */
export interface BoardForm {
  readonly chalk: string;
  readonly species: string;
  /** A number of quarters, or `measured`. */
  readonly quarters: string;
  /** As measured. */
  readonly thickness: string;
  readonly width: string;
  readonly tapers: boolean;
  readonly farWidth: string;
  readonly length: string;
  /** The length of the board before: taken where none is typed. */
  readonly lastLength: string;
  readonly alike: string;
}

export type Sizes = Pick<Board, 'chalk' | 'species' | 'thickness' | 'width' | 'farWidth' | 'length'>;

const quarterNames = ['4', '5', '6', '8', '10', '12', '16'];

/** The thicknesses to choose from, with an uncommon one that is chosen already. */
export const thicknessOptions = (chosen: string): { value: string; label: string }[] =>
  [...new Set([...quarterNames, chosen, 'measured'])].map((value) => ({
    value,
    label: value === 'measured' ? 'Measured' : `${value}/4`,
  }));

/** Which of those a thickness is. */
export const thicknessName = (thickness: Thickness): string =>
  'quarters' in thickness ? String(thickness.quarters) : 'measured';

/** What stands in the form until another is typed: the next mark, and wood, thickness and length of the last board. */
export function formAfter(boards: readonly Board[], units: LengthUnits): BoardForm {
  const last = boards.at(-1);
  const write = (mm: number) => formatLength(mm, units);
  const { species = '', thickness = { quarters: 4 } } = last ?? {};
  return {
    chalk: nextChalkMark(boards.map(({ chalk }) => chalk)),
    species,
    quarters: thicknessName(thickness),
    thickness: 'mm' in thickness ? write(thickness.mm) : '',
    width: '',
    tapers: false,
    farWidth: '',
    length: '',
    lastLength: last ? write(last.length) : '',
    alike: '1',
  };
}

/**
 * Reads and checks what was typed; `isTaken` knows the other boards' marks. A thickness or length that stands as carried
 * over is the last board's own.
 */
export function readBoardForm(
  form: BoardForm,
  isTaken: (mark: string) => boolean,
  units: LengthUnits,
  last?: Pick<Board, 'thickness' | 'length'>,
): FormRead<Sizes & { readonly alike: number }> {
  const measured = form.quarters === 'measured';
  const exact = (text: string, mm = 0) =>
    text === formatLength(mm, units) ? `${Math.round(mm * 1e6) / 1e6} mm` : text;
  const { sizes, problems: ofSizes } = readSizes(
    {
      quarters: measured ? undefined : form.quarters,
      thickness: measured ? exact(form.thickness, last && roughThickness(last.thickness)) : undefined,
      width: form.width,
      farWidth: form.tapers ? form.farWidth : undefined,
      length: form.length.trim() || exact(form.lastLength, last?.length),
    },
    () => units.unit,
  );
  const problems = new Map<string, Problem>(ofSizes);
  const note = <T>(entry: string, found: Outcome<T>) => {
    if (isProblem(found)) problems.set(entry, found);
    return found as T;
  };
  const value = {
    chalk: note('chalk', freeMark(form.chalk, isTaken)),
    species: note('species', chosenWood(form.species)),
    alike: note('alike', checked(parseNumber(form.alike), badCount)),
    ...sizes,
  };
  return { value: problems.size > 0 ? undefined : value, problems };
}

const badCount = (count: number) =>
  badNumber('alike', 'The number of boards', count, 'count', { least: 1, most: 200, whole: true });

/** A mark that no other board has. */
export function freeMark(typed: string, isTaken: (mark: string) => boolean): Outcome<string> {
  const mark = typed.trim();
  if (mark === '') return problem('chalk', 'Give it a mark, like C1.');
  return isTaken(mark) ? problem('chalk', 'Another board has this mark.') : mark;
}

/** Marks are the same whatever their capitals and outer blanks. */
export const plainMark = (mark: string) => mark.trim().toUpperCase();
