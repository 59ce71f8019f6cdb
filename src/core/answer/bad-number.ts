import { phrase } from './phrase.ts';
import { type Problem, problem } from './problem.ts';
import { quantity, type Unit } from './quantity.ts';
import type { Range } from './range.ts';

/** What a number must be to make sense: all limits are optional, `above` shuts out the limit itself. */
export interface Limits {
  readonly above?: number;
  readonly least?: number;
  readonly most?: number;
  readonly whole?: boolean;
}

/**
 * Why a number can't be used, or `undefined` when it can. `name` begins the sentence: `The width`.
 *
 * @param field of the problem
 * @param name as it begins the sentence: `The width`
 * @param value in the unit
 * @param unit of the limits
 * @param limits each may be left out
 * @returns the problem, or undefined when the number can be used
 * @example badNumber('width', 'The width', 0, 'mm', { above: 0 }) // => { field: 'width' }
 */
export function badNumber(
  field: string,
  name: string,
  value: number,
  unit: Unit,
  { above, least, most, whole = false }: Limits,
): Problem | undefined {
  if (typeof value !== 'number' || !Number.isFinite(value)) return problem(field, `${name} is missing. Type it in.`);
  if (whole && !Number.isInteger(value)) return problem(field, `${name} must be a whole number.`);
  if (above !== undefined && value <= above)
    return problem(field, phrase`${name} must be more than ${quantity(above, unit)}.`);
  if (least !== undefined && value < least)
    return problem(field, phrase`${name} must be at least ${quantity(least, unit)}.`);
  if (most !== undefined && value > most)
    return problem(field, phrase`${name} can’t be more than ${quantity(most, unit)}. Check it.`);
  return undefined;
}

/** What `badNumber` takes, as a row of a list. */
export type NumberCheck = Parameters<typeof badNumber>;

/**
 * Why the first of these numbers that can't be used can't.
 *
 * @param rows what `badNumber` takes, each
 * @returns the problem, or undefined when all numbers can be used
 * @example firstBad([['width', 'The width', 0, 'mm', { above: 0 }]]) // => { field: 'width' }
 */
export function firstBad(rows: readonly NumberCheck[]): Problem | undefined {
  for (const row of rows) {
    const bad = badNumber(...row);
    if (bad) return bad;
  }
  return undefined;
}

/**
 * Why a range can't be used: one of its ends is no good, or they are the wrong way round. A range of one value is at
 * `field` itself.
 *
 * @param field of the problem
 * @param name as it begins the sentence: `The wait`
 * @param value both ends in the unit
 * @param unit of the limits
 * @param limits of both ends
 * @returns the problem, or undefined when the range can be used
 * @example badRange('wait', 'The wait', { least: 3600, most: 60 }, 'seconds', {}) // => { field: 'wait' }
 */
export function badRange(field: string, name: string, value: Range, unit: Unit, limits: Limits): Problem | undefined {
  if (value.least === value.most) return badNumber(field, name, value.least, unit, limits);
  return (
    badNumber(`${field}.least`, `${name} (least)`, value.least, unit, limits) ??
    badNumber(`${field}.most`, `${name} (most)`, value.most, unit, limits) ??
    (value.least > value.most
      ? problem(
          field,
          phrase`${name} is the wrong way round: ${quantity(value.least, unit)} to ${quantity(value.most, unit)}. Swap the two.`,
        )
      : undefined)
  );
}
