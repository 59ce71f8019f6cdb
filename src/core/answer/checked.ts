import { isProblem, type Outcome, type Problem } from './problem.ts';

/**
 * A value that also passes a check; what went wrong before stays as it is.
 *
 * @param got a value, or why there is none
 * @param check says what is wrong with a value
 * @returns the value, or the first problem
 * @errors that of `got`, or of `check`
 * @example checked(parseNumber('7'), (value) => badNumber('alike', 'The number', value, 'count', { most: 5 }))
 *   // => { field: 'alike' }
 */
export function checked<T>(got: Outcome<T>, check: (value: T) => Problem | undefined): Outcome<T> {
  return isProblem(got) ? got : (check(got) ?? got);
}
