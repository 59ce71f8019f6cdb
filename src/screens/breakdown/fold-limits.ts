import { badNumber } from '../../core/answer/bad-number.ts';
import type { Problem } from '../../core/answer/problem.ts';

/** Corners that a tilted blade can mitre: 180 degrees is a straight cut, 60 a bevel of 60. */
export const badCorner = (degrees: number): Problem | undefined =>
  badNumber('corner', 'The corner', degrees, 'degrees', { least: 60, most: 180 });

/** What is trimmed beside the kerf: more than a hand's breadth is a slip of the thumb. */
export const badTrim = (trim: number): Problem | undefined =>
  badNumber('trim', 'The trim', trim, 'mm', { least: 0, most: 100 });
