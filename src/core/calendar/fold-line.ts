/** Octets of a line, without its end (RFC 5545, 3.1). */
const mostOctets = 75;

/** UTF-8 octets of one character. */
function octets(character: string): number {
  const point = character.codePointAt(0) ?? 0;
  if (point < 0x80) return 1;
  if (point < 0x800) return 2;
  return point < 0x10000 ? 3 : 4;
}

/**
 * A content line cut so that no piece is longer than 75 octets of UTF-8: each next piece begins with one space.
 *
 * Takes a line without its end; returns it with CRLF and a space at each fold, never inside a character.
 *
 * @param line a content line without its end
 * @returns the line with CRLF and a space at each fold, never inside a character
 * @valid any text
 * @valid any text; no errors
 * @example foldLine('a'.repeat(80)) // => `${'a'.repeat(75)}\r\n aaaaa`
 * @source RFC 5545, section 3.1
 */
export function foldLine(line: string): string {
  let folded = '';
  let used = 0;
  for (const character of line) {
    const more = octets(character);
    if (used + more > mostOctets) {
      folded += '\r\n ';
      used = 1;
    }
    folded += character;
    used += more;
  }
  return folded;
}
