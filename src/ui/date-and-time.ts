/** A moment as the maker's phone writes it, with its date. */
export const dateAndTime = (at: number): string =>
  new Date(at).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' });
