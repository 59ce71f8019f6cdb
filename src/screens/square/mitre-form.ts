import { parseNumber } from '../../core/answer/parse-number.ts';
import { isProblem, type Outcome, type Problem } from '../../core/answer/problem.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import type { CornerName } from '../../core/square/readings.ts';

export type BoxEntry = 'length' | 'width' | 'thickness' | 'loss';
export type PartEntry = 'front' | 'back' | 'right' | 'left';

/** The eight cuts of a frame, by corner and the part that is cut. */
export const cuts = ['A front', 'A left', 'B front', 'B right', 'C right', 'C back', 'D back', 'D left'] as const;
export type Cut = (typeof cuts)[number];
export const cornersOfFrame: readonly CornerName[] = ['A', 'B', 'C', 'D'];

export interface MitreForm {
  readonly view: 'parts' | 'angles';
  readonly given: 'inside' | 'outside';
  /** One setting of the saw for all cuts, or each point measured. */
  readonly angles: 'one' | 'each';
  readonly texts: Readonly<Record<string, string>>;
}

export const emptyMitres: MitreForm = { view: 'parts', given: 'inside', angles: 'one', texts: {} };

/** What is typed in these entries: the values of those that are good, the problems of the others. */
export function readTexts<E extends string>(
  entries: readonly E[],
  texts: MitreForm['texts'],
  read: (text: string) => Outcome<number>,
): { readonly values: Partial<Record<E, number>>; readonly problems: Map<string, Problem> } {
  const values: Partial<Record<E, number>> = {};
  const problems = new Map<string, Problem>();
  for (const entry of entries) {
    const text = texts[entry] ?? '';
    if (text.trim() === '') continue;
    const value = read(text);
    if (isProblem(value)) problems.set(entry, value);
    else values[entry] = value;
  }
  return { values, problems };
}

export const lengthsIn = (unit: 'in' | 'mm') => (text: string) => parseLength(text, unit);

/** The errors of the eight cuts, degrees, each point's angle less 45; a point that isn't given is taken as true. */
export function cutErrors(form: MitreForm): {
  readonly errors: readonly number[] | undefined;
  readonly problems: Map<string, Problem>;
} {
  const entries: readonly string[] = form.angles === 'one' ? ['all'] : cuts;
  const { values, problems } = readTexts(entries, form.texts, parseNumber);
  if (problems.size > 0 || Object.keys(values).length === 0) return { errors: undefined, problems };
  return { errors: cuts.map((cut) => (values[form.angles === 'one' ? 'all' : cut] ?? 45) - 45), problems };
}
