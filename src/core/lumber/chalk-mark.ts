/**
 * The next short mark to chalk on a board's end: the last mark's letters with the next free number.
 *
 * @param marks those in use, in the order they were given
 * @returns a mark that is none of these, capitals and blanks aside: 1 to begin with, 13 after 12, B8 after B7, 08 after 07, A1 after A
 * Valid for any texts; marks are compared without regard to capitals and outer blanks.
 *
 * Example: `nextChalkMark(['A1', 'A2', 'A4'])` is `A5`.
 *
 * Source: common practice.
 */
export function nextChalkMark(marks: readonly string[]): string {
  const { letters, digits } = split(marks.at(-1) ?? '');
  const highest = marks
    .map(split)
    .filter((mark) => mark.letters.trim().toUpperCase() === letters.trim().toUpperCase())
    .reduce((most, mark) => Math.max(most, Number(mark.digits)), 0);
  return letters + String(highest + 1).padStart(digits.length, '0');
}

/** Digits past the ninth from the end count as letters, so that numbers stay exact. */
function split(mark: string): { readonly letters: string; readonly digits: string } {
  const digits = /\d{0,9}$/.exec(mark.trim())?.[0] ?? '';
  return { letters: mark.trim().slice(0, mark.trim().length - digits.length), digits };
}
