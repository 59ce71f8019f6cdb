const minute = 60;
const hour = 3600;
const day = 86_400;

/**
 * Writes a duration in its two largest units, rounded to what matters at that size.
 *
 * @param seconds duration in seconds; may be negative
 * @returns `45 s`, `2 min 30 s` below ten minutes, `25 min`, `1 h 20 min`, and from two days on `3 days 4 h`
 * @example formatDuration(4800) // => '1 h 20 min'
 */
export function formatDuration(seconds: number): string {
  const size = Math.abs(seconds);
  const step = size < 10 * minute - 0.5 ? 1 : size < 2 * day - minute / 2 ? minute : hour;
  const rounded = Math.round(size / step) * step;
  const sign = seconds < 0 && rounded > 0 ? '−' : '';
  if (rounded < minute) return `${sign}${rounded} s`;
  if (rounded < hour) return sign + pair(rounded, minute, 'min', 1, 's');
  if (rounded < 2 * day) return sign + pair(rounded, hour, 'h', minute, 'min');
  return sign + pair(rounded, day, 'days', hour, 'h');
}

function pair(seconds: number, large: number, largeName: string, small: number, smallName: string): string {
  const rest = Math.floor((seconds % large) / small);
  return `${Math.floor(seconds / large)} ${largeName}${rest === 0 ? '' : ` ${rest} ${smallName}`}`;
}
