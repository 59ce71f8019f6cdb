/**
 * The next short mark to chalk on a board's end: the last mark's letters with the next free number.
 *
 * @param marks those in use, in the order they were given
 * @returns a mark that is none of these, capitals and blanks aside: 1 to begin with, 13 after 12, B8 after B7, 08 after
 *   07, A1 after A
 * @valid any texts; marks are compared without regard to capitals and outer blanks
 * @example nextChalkMark(['A1', 'A2', 'A4']) // => 'A5'
 * @source common practice
 */
export function nextChalkMark(marks: readonly string[]): string {
  const { letters, digits } = split(marks.at(-1) ?? '');
  const same = letters.toUpperCase();
  let highest = 0;
  for (const mark of marks) {
    const one = split(mark);
    if (one.letters.toUpperCase() === same) highest = Math.max(highest, Number(one.digits));
  }
  return letters + String(highest + 1).padStart(digits.length, '0');
}

/** Digits past the ninth from the end count as letters, so that numbers stay exact. */
function split(mark: string): { readonly letters: string; readonly digits: string } {
  const [, letters = '', digits = ''] = /^(.*?)(\d{0,9})$/s.exec(mark.trim()) ?? [];
  return { letters, digits };
}
