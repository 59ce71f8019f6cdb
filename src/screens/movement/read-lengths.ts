import { isProblem, type Outcome, within } from '../../core/answer/problem.ts';
import { parseLength } from '../../core/length/parse-length.ts';

export type Lengths<K extends string> = Readonly<Record<K, number>>;

/** Reads all entries; the first that is no length is the problem, at its name. */
export function readLengths<K extends string>(
  texts: Readonly<Record<K, string>>,
  unit: 'in' | 'mm',
): Outcome<Lengths<K>> {
  const lengths: Partial<Record<K, number>> = {};
  for (const name of Object.keys(texts) as K[]) {
    const value = parseLength(texts[name], unit);
    if (isProblem(value)) return within(value, name);
    lengths[name] = value;
  }
  return lengths as Lengths<K>;
}
