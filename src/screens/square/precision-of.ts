import { stickPrecision } from '../../tables/reading-precisions.ts';
import type { Way } from './square-form.ts';

/** How far off a reading can be, mm: the shop's own tape, or a stick where that reads closer. */
export function precisionOf(way: Way, tape: number): number {
  return way === 'stick' ? Math.min(tape, stickPrecision.precision) : tape;
}
