/**
 * A name as its words in one order, so that `cherry, black` and `Black cherry` are the same.
 *
 * Example: `sameWords('Black cherry')` is `black cherry`; so is `sameWords('cherry, black')`.
 */
export const sameWords = (name: string): string => (name.toLowerCase().match(/[a-z0-9]+/g) ?? []).sort().join(' ');
