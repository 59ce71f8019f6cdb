import { isProblem } from '../../core/answer/problem.ts';
import { formatLength } from '../../core/length/format-length.ts';
import { mmPerInch } from '../../core/length/length-unit-sizes.ts';
import type { LengthUnits } from '../../core/length/length-units.ts';
import { parseLength } from '../../core/length/parse-length.ts';

const trailingFraction = /\s*\d+\/\d+\s*$/;
const trailingUnit = /\s*(mm|cm|m|"|'|in|ft)\s*$/;

/** The text of a length entry after a key of the pad that says this: `7`, `3/4`, `ft`, `+1/16`, `⌫`. */
export function pressKey(text: string, key: string, units: LengthUnits): string {
  const typed = text.trim();
  const whole = text.replace(trailingFraction, '');
  if (/^[\d.]$/.test(key)) return whole === text ? text + key : text;
  if (key === '⌫') return whole === text ? text.replace(/\s*(mm|cm|' |.)$/, '').trimEnd() : whole;
  if (/^[−+]/.test(key)) {
    const now = typed === '' ? 0 : parseLength(text, units.unit);
    if (isProblem(now)) return text;
    const nudge = units.unit === 'in' ? mmPerInch / units.nearest : 1;
    return formatLength(Math.max(0, key.startsWith('+') ? now + nudge : now - nudge), units);
  }
  if (key.includes('/')) return `${whole.replace(/\.$/, '').trimEnd()} ${key}`.trimStart();
  if (typed === '') return text;
  if (key === 'ft') return text.includes("'") ? text : `${typed}' `;
  return `${text.replace(trailingUnit, '')} ${key}`;
}
