import { type Range, range, scaled } from '../core/answer/range.ts';

/** Spans of time as tables say them, in seconds. */
const span =
  (seconds: number) =>
  (least: number, most: number): Range =>
    scaled(range(least, most), seconds);

export const minutes = span(60);
export const hours = span(3600);
export const days = span(86_400);
/** Thirty days each. */
export const months = span(30 * 86_400);
