import { problem } from '../../core/answer/problem.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import type { FarEnd, Measured } from '../../core/square/measured.ts';
import type { ReadingName } from '../../core/square/readings.ts';
import { type ReadTexts, readTexts, type Texts } from './read-texts.ts';

export type Way = Measured['way'];
/** What stands before the maker: it decides what the correction says. */
export type Situation = 'line' | 'sawn' | 'clamps' | 'layout';
export type Entry = ReadingName | 'length' | 'width' | 'difference';

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
  readonly texts: Texts<Entry>;
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

const ofWay: Readonly<Record<Way, readonly Entry[]>> = {
  readings: ['front', 'right', 'back', 'left', 'diagonalAC', 'diagonalBD'],
  diagonals: ['length', 'width', 'diagonalAC', 'diagonalBD'],
  stick: ['length', 'width', 'difference'],
};

/** What is entered, in the order of entry. Who lays out from nothing has only a size. */
export function entriesOf({ way, situation }: Pick<SquareForm, 'way' | 'situation'>): readonly Entry[] {
  return situation === 'layout' ? ['length', 'width'] : ofWay[way];
}

/** The entry for a line of the drawing: where only one length is taken, both edges lead to it. */
export function entryOfLine(line: ReadingName, form: Pick<SquareForm, 'way' | 'situation'>): Entry | undefined {
  const size = { front: 'length', back: 'length', right: 'width', left: 'width' } as const;
  const likely = [line, line in size ? size[line as keyof typeof size] : 'difference'] as const;
  return entriesOf(form).find((entry) => (likely as readonly Entry[]).includes(entry));
}

export interface ReadForm extends ReadTexts<Entry> {
  /** What was measured, once all that this way needs is there; readings are taken as soon as there is one. */
  readonly measured: Measured | undefined;
}

/** Reads what was typed; `unit` is what a bare number means. Empty entries are not measured yet. */
export function readSquareForm(form: SquareForm, unit: 'in' | 'mm'): ReadForm {
  const { values, problems } = readTexts(entriesOf(form), form.texts, (text, entry) => {
    const value = parseLength(text, unit);
    return value === 0 && entry !== 'difference'
      ? problem(entry, 'Nothing is 0 long. Measure it, or leave it empty.')
      : value;
  });
  const complete = problems.size === 0 && form.situation !== 'layout';
  return { values, problems, measured: complete ? measuredOf(form, values) : undefined };
}

function measuredOf(form: SquareForm, values: ReadForm['values']): Measured | undefined {
  const { farEnd } = form;
  const { length, width, difference, diagonalAC, diagonalBD } = values;
  if (form.way === 'readings') {
    const readings = Object.fromEntries(ofWay.readings.map((name) => [name, values[name]]).filter(([, mm]) => mm));
    return Object.keys(readings).length > 0 ? { way: 'readings', readings } : undefined;
  }
  if (length === undefined || width === undefined) return undefined;
  if (form.way === 'stick') {
    if (difference === undefined) return undefined;
    const signed = form.longer === 'diagonalAC' ? difference : -difference;
    return { way: 'stick', length, width, difference: signed, farEnd };
  }
  if (diagonalAC === undefined || diagonalBD === undefined) return undefined;
  return { way: 'diagonals', length, width, diagonalAC, diagonalBD, farEnd };
}
