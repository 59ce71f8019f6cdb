import { isProblem, type Outcome, type Problem } from '../../core/answer/problem.ts';

export type Texts<E extends string = string> = Readonly<Partial<Record<E, string>>>;

export interface ReadTexts<E extends string> {
  readonly values: Readonly<Partial<Record<E, number>>>;
  readonly problems: Map<string, Problem>;
}

/** What is typed in these entries: the values of those that are good, the problems of the others; an empty one is neither. */
export function readTexts<E extends string>(
  entries: readonly E[],
  texts: Texts<E>,
  read: (text: string, entry: E) => Outcome<number>,
): ReadTexts<E> {
  const values: Partial<Record<E, number>> = {};
  const problems = new Map<string, Problem>();
  for (const entry of entries) {
    const text = texts[entry] ?? '';
    if (text.trim() === '') continue;
    const value = read(text, entry);
    if (isProblem(value)) problems.set(entry, value);
    else values[entry] = value;
  }
  return { values, problems };
}
