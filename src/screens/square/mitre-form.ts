import { parseNumber } from '../../core/answer/parse-number.ts';
import type { Problem } from '../../core/answer/problem.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import type { CornerName } from '../../core/square/readings.ts';
import { readTexts, type Texts } from './read-texts.ts';

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
  readonly texts: Texts;
}

export const emptyMitres: MitreForm = { view: 'parts', given: 'inside', angles: 'one', texts: {} };

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
