import { mm } from '../answer/quantity.ts';

/** Longer than any board or piece, mm: a size above it has slipped. */
const largest = 30_000;

/** For the messages about sizes: they name the most that is taken. */
export const most = { most: mm(largest) };

/** Whether it can be the size of something, mm. */
export const isSize = (value: number): boolean => Number.isFinite(value) && value > 0 && value <= largest;

/** Whether it can be an allowance or a kerf, mm: a size, or none. */
export const isAllowance = (value: number): boolean => value === 0 || isSize(value);
