import { isProblem } from '../../core/answer/problem.ts';
import { formatLength } from '../../core/length/format-length.ts';
import type { LengthUnits } from '../../core/length/length-units.ts';
import { parseLength } from '../../core/length/parse-length.ts';

export type PadKey =
  | { readonly type: 'text'; readonly text: string }
  | { readonly type: 'fraction'; readonly text: string }
  | { readonly type: 'unit'; readonly text: string }
  | { readonly type: 'nudge'; readonly mm: number }
  | { readonly type: 'back' };

const trailingFraction = /\s*\d+\/\d+\s*$/;
const trailingUnit = /\s*(mm|cm|m|"|'|in|ft)\s*$/;

/** The text of a length entry after one key of the pad. */
export function pressKey(text: string, key: PadKey, units: LengthUnits): string {
  switch (key.type) {
    case 'text':
      return trailingFraction.test(text) ? text : text + key.text;
    case 'fraction': {
      const whole = text.replace(trailingFraction, '').replace(/\.$/, '').trimEnd();
      return whole === '' ? key.text : `${whole} ${key.text}`;
    }
    case 'unit':
      if (key.text === "'") return text.trim() === '' || text.includes("'") ? text : `${text.trim()}' `;
      return text.trim() === '' ? text : `${text.replace(trailingUnit, '')} ${key.text}`;
    case 'nudge': {
      const now = text.trim() === '' ? 0 : parseLength(text, units.unit);
      if (isProblem(now)) return text;
      return formatLength(Math.max(0, now + key.mm), units);
    }
    case 'back':
      return trailingFraction.test(text)
        ? text.replace(trailingFraction, '')
        : text.replace(/\s*(mm|cm|' |.)$/, '').trimEnd();
  }
}
