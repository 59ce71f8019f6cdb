import { badNumber, type Limits } from '../../core/answer/bad-number.ts';
import { checked } from '../../core/answer/checked.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { isProblem, type Outcome, type Problem } from '../../core/answer/problem.ts';
import type { Unit } from '../../core/answer/quantity.ts';

export const isEmpty = (text: string) => text.trim() === '';

/** Reads a form entry by entry; what can't be read is a problem at its entry, and is undefined. */
export function formReader() {
  const problems = new Map<string, Problem>();
  const read = <T>(entry: string, value: Outcome<T>): T | undefined => {
    if (!isProblem(value)) return value;
    problems.set(entry, value);
    return undefined;
  };
  return {
    problems,
    read,
    /** The same for what the core found; the entry follows from the field that it names. */
    found: <T>(value: Outcome<T>, entryOf = (field: string) => field): T | undefined =>
      isProblem(value) ? read<T>(entryOf(value.field), value) : value,
    number: (entry: string, text: string, name: string, unit: Unit, limits: Limits) =>
      read(
        entry,
        checked(parseNumber(text), (value) => badNumber('', name, value, unit, limits)),
      ),
  };
}
