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
  const [, letters = '', digits = ''] = /^(.*?)(\d*)$/su.exec(marks.at(-1)?.trim() ?? '') ?? [];
  const used = new Set(marks.map(plain));
  const alike = marks.map((mark) => /^(.*?)(\d{1,9})$/su.exec(mark.trim())).filter((found) => found !== null);
  const numbers = alike.filter(([, own = '']) => plain(own) === plain(letters)).map(([, , number]) => Number(number));
  let next = numbers.reduce((most, number) => Math.max(most, number), 0) + 1;
  const mark = () => letters + String(next).padStart(digits.length > 9 ? 0 : digits.length, '0');
  while (used.has(plain(mark()))) next++;
  return mark();
}

function plain(mark: string): string {
  return mark.trim().toUpperCase();
}
