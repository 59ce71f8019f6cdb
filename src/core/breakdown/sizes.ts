import { badNumber } from '../answer/bad-number.ts';
import type { Problem } from '../answer/problem.ts';

/** Longer than any board or piece, mm: a size above it has slipped. */
const largest = 30_000;

/** Rounding that a plan is forgiven, mm: far below what any saw can cut, far above what adding doubles loses. */
export const slack = 1e-6;

/** Why it can't be the size of something, mm. */
export const badSize = (field: string, name: string, value: number): Problem | undefined =>
  badNumber(field, name, value, 'mm', { above: 0, most: largest });

/** Why it can't be an allowance or a kerf, mm: a size, or none. */
export const badAllowance = (field: string, name: string, value: number): Problem | undefined =>
  badNumber(field, name, value, 'mm', { least: 0, most: largest });
