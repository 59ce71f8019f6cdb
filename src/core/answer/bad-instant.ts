import { type Problem, problem } from './problem.ts';

/** The last second of the year 9999: the last that a calendar file can hold. */
const lastInstant = 253402300799000;

/** Why a moment in ms since the epoch can't be used, or `undefined` when it can: any moment from 1970 to 9999. */
export function badInstant(field: string, name: string, at: number): Problem | undefined {
  return Number.isFinite(at) && at >= 0 && at <= lastInstant
    ? undefined
    : problem(field, `${name} is not a date. Check the phone's clock.`);
}
