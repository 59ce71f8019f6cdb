import type { Limits, NumberCheck } from '../answer/bad-number.ts';

/** Rounding that a plan is forgiven, mm: far below what any saw can cut, far above what adding doubles loses. */
export const slack = 1e-6;

/** Longer than any board or piece, mm: a size above it has slipped. */
const largest = 20_000;

/** What the size of something can be, mm. */
export const size: Limits = { above: 0, most: largest };

/** What an allowance or a kerf can be, mm: a size, or none. */
export const allowance: Limits = { least: 0, most: largest };

/** `edgeAllowance` as it begins a sentence: `The edge allowance`. */
const named = (field: string): string => `The ${field.replace(/[A-Z]/, (letter) => ` ${letter.toLowerCase()}`)}`;

/**
 * Lengths of one thing that must lie within limits, as `firstBad` takes them.
 *
 * @param thing its figures in mm; one that is left out, or null for a machine that isn't owned, is none
 * @param fields which of them
 * @param limits mm
 * @param at the path of the thing, and what the figures are said to be `of`
 * @returns a row for each figure that is there, named as its field
 * @valid fields named in plain words
 * @example lengths({ ripKerf: 3, jointerWidth: null }, ['ripKerf', 'jointerWidth'], size).map(([, name]) => name)
 *   // => ['The rip kerf']
 * @source the statement of the problem
 */
export const lengths = <F extends string>(
  thing: { readonly [field in F]?: number | null },
  fields: readonly F[],
  limits: Limits,
  { path = '', of = '' } = {},
): NumberCheck[] =>
  fields.flatMap((field): NumberCheck[] => {
    const value = thing[field];
    return value === null || value === undefined ? [] : [[path + field, named(field) + of, value, 'mm', limits]];
  });
