/** The record that was made last; undefined of none. */
export const newest = <R extends { readonly created: number }>(records: readonly R[]): R | undefined =>
  records.toSorted((a, b) => b.created - a.created)[0];
