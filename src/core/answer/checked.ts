import { isProblem, type Outcome, type Problem } from './problem.ts';

/**
 * A value that also passes a check; what went wrong before stays as it is.
 *
 * Example: `checked(parseNumber('7'), (value) => badNumber('alike', 'The number', value, 'count', { most: 5 }))` is a problem.
 */
export function checked<T>(got: Outcome<T>, check: (value: T) => Problem | undefined): Outcome<T> {
  return isProblem(got) ? got : (check(got) ?? got);
}
