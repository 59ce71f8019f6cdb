import type { Problem } from '../../core/answer/problem.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import type { FarEnd, Measured } from '../../core/square/measured.ts';
import { type LineName, lineNames, type ReadingName } from '../../core/square/readings.ts';
import { formReader } from '../../ui/form-reader.ts';

export type Way = 'readings' | 'diagonals' | 'stick';
/** What stands before the maker: it decides what the correction says. */
export type Situation = 'line' | 'sawn' | 'clamps' | 'layout';

/** A check as it is typed; kept through a killed tab. */
export interface SquareForm {
  readonly way: Way;
  readonly situation: Situation;
  readonly use: string;
  readonly farEnd: FarEnd;
  /** The try square that found the left end square; empty when it is not said. */
  readonly tool: string;
  /** For the stick: the diagonal that is longer. */
  readonly longer: 'diagonalAC' | 'diagonalBD';
  readonly texts: Readonly<Partial<Record<ReadingName, string>>>;
}

export const emptyForm: SquareForm = {
  way: 'readings',
  situation: 'line',
  use: 'drawers',
  farEnd: 'parallel',
  tool: '',
  longer: 'diagonalAC',
  texts: {},
};

const ofWay: Readonly<Record<Way, readonly ReadingName[]>> = {
  readings: lineNames,
  diagonals: ['front', 'left', 'diagonalAC', 'diagonalBD'],
  stick: ['front', 'left', 'difference'],
};

/** What is entered, in the order of entry. Who lays out from nothing has only a size. */
export function entriesOf({ way, situation }: Pick<SquareForm, 'way' | 'situation'>): readonly ReadingName[] {
  return situation === 'layout' ? ['front', 'left'] : ofWay[way];
}

/** The entry for a line of the drawing: where only one length is taken, both edges lead to it. */
export function entryOfLine(line: LineName, form: Pick<SquareForm, 'way' | 'situation'>): ReadingName | undefined {
  const instead: Partial<Record<LineName, ReadingName>> = { back: 'front', right: 'left' };
  const entries = entriesOf(form);
  return entries.find((entry) => entry === line) ?? entries.find((entry) => entry === (instead[line] ?? 'difference'));
}

export interface ReadForm {
  readonly values: Readonly<Partial<Record<ReadingName, number>>>;
  readonly problems: Map<string, Problem>;
  /** What was measured, once all that this way needs is there; readings are taken as soon as there is one. */
  readonly measured: Measured | undefined;
}

/** Reads what was typed; `unit` is what a bare number means. Empty entries are not measured yet. */
export function readSquareForm(form: SquareForm, unit: 'in' | 'mm'): ReadForm {
  const { way, situation, longer, farEnd } = form;
  const entries = entriesOf(form);
  const { problems, typed } = formReader();
  const values: Partial<Record<ReadingName, number>> = {};
  for (const entry of entries) {
    const value = typed(entry, form.texts[entry] ?? '', (text) => parseLength(text, unit));
    if (value !== undefined) values[entry] = value;
  }
  const needed = way === 'readings' ? 1 : entries.length;
  if (situation === 'layout' || problems.size > 0 || Object.keys(values).length < needed)
    return { values, problems, measured: undefined };
  const { difference } = values;
  const readings =
    difference === undefined ? values : { ...values, difference: longer === 'diagonalAC' ? difference : -difference };
  return { values, problems, measured: { readings, ...(way !== 'readings' && { farEnd }) } };
}
