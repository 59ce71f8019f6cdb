import { isProblem, type Outcome, problem } from '../core/answer/problem.ts';
import { formatLength } from '../core/length/format-length.ts';
import { parseLength } from '../core/length/parse-length.ts';
import type { Figure } from './ask.ts';

const fractions: readonly unknown[] = [2, 4, 8, 16, 32, 64];
/** Longer than any board or shop; beyond it the text would stop being digits. */
const mostMm = 1e9;

/** `{"text": "5 3/4", "unit": "in"}` to millimetres, or `{"mm": 146.05, "unit": "in", "nearest": 16}` to text. */
export const figure: Figure = (input) => {
  const { text, mm, unit, nearest = 16 } = input as Record<string, unknown>;
  if (unit !== 'in' && unit !== 'mm') return problem('unit', 'unit must be "in" or "mm".');
  if (text !== undefined && mm !== undefined) return problem('text', 'Give text or mm, not both.');
  return mm === undefined ? toMillimetres(text, unit) : toText(mm, unit, nearest);
};

function toMillimetres(text: unknown, unit: 'in' | 'mm'): Outcome<object> {
  if (typeof text !== 'string') return problem('text', 'Give the length as text, or as a number in mm.');
  const mm = parseLength(text, unit);
  return isProblem(mm) ? { ...mm, field: 'text' } : { mm };
}

function toText(mm: unknown, unit: 'in' | 'mm', nearest: unknown): Outcome<object> {
  if (typeof mm !== 'number' || !Number.isFinite(mm)) return problem('mm', 'mm must be a number.');
  if (Math.abs(mm) > mostMm) return problem('mm', 'That is longer than anything in a shop.');
  if (typeof nearest !== 'number' || !fractions.includes(nearest))
    return problem('nearest', 'nearest must be 2, 4, 8, 16, 32 or 64.');
  return { text: formatLength(mm, { unit, nearest }) };
}
