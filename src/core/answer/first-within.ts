import { type Problem, within } from './problem.ts';

/**
 * What is wrong with the first wrong one of a list, at its place in the list.
 *
 * @param items to be checked, in order
 * @param path of the list
 * @param check says what is wrong with one
 * @returns the problem, or undefined when all are right
 * @example firstWithin([3, 0], 'alike', (alike) => badNumber('count', 'The number', alike, 'count', { above: 0 }))
 *   // => { field: 'alike.1.count' }
 */
export function firstWithin<T>(
  items: readonly T[],
  path: string,
  check: (item: T, index: number) => Problem | undefined,
): Problem | undefined {
  for (const [index, item] of items.entries()) {
    const wrong = check(item, index);
    if (wrong) return within(wrong, `${path}.${index}`);
  }
  return undefined;
}
