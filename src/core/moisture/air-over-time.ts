import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome, problem } from '../answer/problem.ts';
import { count, percent, seconds } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { type Air, equilibriumMoisture } from './equilibrium-moisture.ts';

/** Wood follows the air over weeks: older readings than this don't count. */
const monthSeconds = 30 * 86_400;

/**
 * The moisture that wood in a shop is heading for, from readings of its air: the mean of what each holds wood at.
 *
 * @param readings in any order; at in milliseconds since 1970, temperature in degrees Celsius, relative humidity in
 *   percent
 * @returns moisture content in percent, over the 30 days up to the newest reading
 * @valid as `equilibriumMoisture`; the more evenly the readings are spread, the better the mean
 * @errors a `Problem` on `readings` when there is none, or on what is wrong with one of them
 * @example airOverTime([{ at: 0, celsius: 21.1, humidity: 50 }, { at: 7 * 864e5, celsius: 21.1, humidity: 38 }])
 *   // => { value: 8.3 }
 * @source Wood handbook (FPL-GTR-190), Eq. 4-5; the mean over a month is an assumption
 */
export function airOverTime(readings: readonly (Air & { readonly at: number })[]): Outcome<Worked> {
  const newest = Math.max(...readings.map(({ at }) => at));
  const recent = readings.filter(({ at }) => newest - at <= monthSeconds * 1000).map((air) => equilibriumMoisture(air));
  const wrong = recent.find(isProblem);
  if (wrong) return wrong;
  const sound = recent.flatMap((one) => (isProblem(one) ? [] : one));
  const [first] = sound;
  if (!first) return problem('readings', 'No reading of the air yet.');
  if (sound.length === 1) return first;
  const value = sound.reduce((sum, one) => sum + one.value, 0) / sound.length;
  return {
    value,
    working: {
      steps: [
        {
          finds: 'equilibrium moisture',
          by: phrase('mean of {readings} readings within {time} by the sorption equation, {least} to {most}', {
            readings: count(sound.length),
            time: seconds(monthSeconds),
            least: percent(Math.min(...sound.map((one) => one.value))),
            most: percent(Math.max(...sound.map((one) => one.value))),
          }),
          gives: percent(value),
        },
      ],
      ...(first.working.holds && { holds: first.working.holds }),
      sources: [...first.working.sources, 'assumption'],
    },
  };
}
