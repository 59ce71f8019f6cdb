/**
 * Writes a number with at most so many decimals: trailing zeros left out, a true minus sign, no minus before 0.
 *
 * @param value any number
 * @param decimals the most that are written
 * @returns text
 * @example formatDecimals(-2.5, 2) // => '−2.5'
 */
export function formatDecimals(value: number, decimals: number): string {
  const text = String(Number(value.toFixed(decimals)));
  return text === '0' || text === '-0' ? '0' : text.replace('-', '−');
}

/**
 * Writes a number with about so many significant digits: whole digits are never cut, and no more than five decimals
 * follow.
 *
 * @param value any number
 * @param digits about so many
 * @returns text
 * @example [0.019664, 0.00248, 1234.5].map((value) => formatSignificant(value, 3)) // => ['0.0197', '0.00248', '1235']
 */
export function formatSignificant(value: number, digits = 3): string {
  const leading = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
  return formatDecimals(value, Math.min(5, Math.max(0, digits - 1 - leading)));
}
