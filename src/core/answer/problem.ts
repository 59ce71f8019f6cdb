import { type Phrase, phrase, type Words } from './phrase.ts';

/** Why an input can't be answered: which field, what is wrong with it, and what to do about it. */
export interface Problem {
  readonly kind: 'problem';
  /** Path of the field in the input, for example `width` or `boards.3.length`. */
  readonly field: string;
  readonly message: Phrase;
}

/** A value, or the reason why there is none. */
export type Outcome<T> = T | Problem;

/**
 * A problem.
 *
 * @param field path of the field in the input
 * @param said what is wrong and what to do about it
 * @returns the problem
 * @example problem('width', 'Type the width.') // => { kind: 'problem', field: 'width' }
 */
export function problem(field: string, said: Words): Problem {
  return { kind: 'problem', field, message: phrase`${said}` };
}

/**
 * Whether an outcome is a problem rather than the value.
 *
 * @param outcome what a computation gave
 * @returns yes or no
 * @example [problem('width', 'Type the width.'), 105].map(isProblem) // => [true, false]
 */
export function isProblem(outcome: unknown): outcome is Problem {
  return typeof outcome === 'object' && outcome !== null && (outcome as { kind?: unknown }).kind === 'problem';
}

/**
 * The same problem one level further out: `within(problem, 'boards.3')` turns `width` into `boards.3.width`.
 *
 * @param inner the problem
 * @param prefix path of what holds its field
 * @returns the problem with the longer path
 * @example within(problem('width', 'Type the width.'), 'boards.3') // => { field: 'boards.3.width' }
 */
export function within(inner: Problem, prefix: string): Problem {
  return { ...inner, field: inner.field === '' ? prefix : `${prefix}.${inner.field}` };
}
