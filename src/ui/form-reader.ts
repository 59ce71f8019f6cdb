import { parseNumber } from '../core/answer/parse-number.ts';
import { isProblem, type Outcome, type Problem } from '../core/answer/problem.ts';

/**
 * Reads a form entry by entry. What can't be read is a problem at its entry, and the first one stands; the core says
 * what is missing or can't be.
 */
export function formReader() {
  const problems = new Map<string, Problem>();
  /** What was found at an entry; undefined where it is a problem. */
  const read = <T>(entry: string, found: Outcome<T>): T | undefined => {
    if (!isProblem(found)) return found;
    if (!problems.has(entry)) problems.set(entry, found);
    return undefined;
  };
  /** What is typed; undefined where nothing is. */
  const typed = <T>(entry: string, text: string, parse: (text: string) => Outcome<T>): T | undefined =>
    text.trim() === '' ? undefined : read(entry, parse(text));
  return {
    problems,
    read,
    typed,
    /** A number that the core asks for: NaN where none can be read. */
    number: (entry: string, text: string, parse: (text: string) => Outcome<number> = parseNumber): number =>
      typed(entry, text, parse) ?? Number.NaN,
    /** What the core found; its problem goes to the entry of the field that it names. */
    found: <T>(found: Outcome<T>, entryOf = (field: string) => field): T | undefined =>
      read(isProblem(found) ? entryOf(found.field) : '', found),
  };
}

export type FormReader = ReturnType<typeof formReader>;
