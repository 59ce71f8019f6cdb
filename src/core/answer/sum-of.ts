/**
 * Adds up a figure of each item.
 *
 * @param items what is added up
 * @param value the figure of one item, in any unit
 * @returns the sum in that unit; 0 of nothing
 * @valid finite figures
 * @example sumOf([{ width: 90 }, { width: 60 }], ({ width }) => width) // => 150
 * @source arithmetic
 */
export const sumOf = <T>(items: readonly T[], value: (item: T) => number): number =>
  items.reduce((sum, item) => sum + value(item), 0);
