import { useDraft } from '../../app/draft.ts';
import { isProblem, type Outcome, type Problem, within } from '../../core/answer/problem.ts';
import { formatLength } from '../../core/length/format-length.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import { units } from '../../ui/units.ts';

type Lengths<K extends string> = Readonly<Record<K, number>>;

export interface Entries<K extends string> {
  readonly lengths: Outcome<Lengths<K>>;
  /** What an entry needs; a problem found by the core stands at the entry that it names. */
  field(name: K, found: unknown): { value: string; problem: Problem | undefined; onInput(text: string): void };
}

/** A few lengths to ask the core with, kept as typed through a killed tab; in mm at first. Undefined until they are read. */
export function useEntries<K extends string>(key: string, initial: Lengths<K>): Entries<K> | undefined {
  const names = Object.keys(initial) as K[];
  const fresh = Object.fromEntries(names.map((name) => [name, formatLength(initial[name], units.value)])) as Record<
    K,
    string
  >;
  // A bare number means another length in other units: each keeps its own text.
  const draft = useDraft<Record<K, string>>(`${key}-${units.value.unit}`, fresh);
  const texts = draft.value;
  if (!texts) return undefined;
  const lengths = readLengths(texts, units.value.unit);
  return {
    lengths,
    field: (name, found) => ({
      value: texts[name],
      problem: [lengths, found].filter(isProblem).find(({ field }) => field === name),
      onInput: (text) => draft.set({ ...texts, [name]: text }),
    }),
  };
}

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
