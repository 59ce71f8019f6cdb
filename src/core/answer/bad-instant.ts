import { type Problem, problem } from './problem.ts';

/** The last second of the year 9999: the last that a calendar file can hold. */
const lastInstant = 253402300799000;

/**
 * Why a moment in ms since the epoch can't be used, or `undefined` when it can: any moment from 1970 to 9999.
 *
 * @param field of the problem
 * @param name as it begins the sentence: `The start`
 * @param at ms since the epoch
 * @returns the problem, or undefined when the moment can be used
 * @example badInstant('start', 'The start', -1) // => { field: 'start' }
 */
export function badInstant(field: string, name: string, at: number): Problem | undefined {
  return Number.isFinite(at) && at >= 0 && at <= lastInstant
    ? undefined
    : problem(field, `${name} is not a date. Check the phone’s clock.`);
}
