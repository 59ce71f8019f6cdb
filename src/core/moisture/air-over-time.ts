import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome, problem } from '../answer/problem.ts';
import { count, percent, seconds } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { type Air, equilibriumMoisture } from './equilibrium-moisture.ts';

/** Wood follows the air over weeks: older readings than this say nothing of where it is going now. */
const monthSeconds = 30 * 86_400;

/**
 * The moisture that wood in a shop is heading for, from readings of its air: the mean of what each holds wood at.
 *
 * @param readings in any order; at in milliseconds since 1970, temperature in degrees Celsius, relative humidity in
 *   percent
 * @param now in milliseconds since 1970
 * @returns moisture content in percent, over the last 30 days
 * @valid as `equilibriumMoisture`; the more evenly the readings are spread, the better the mean. Readings more than 30
 *   days old, or from a clock that was as far ahead, don't count
 * @errors a `Problem` on `readings` when there is none, or none that counts, or on what is wrong with one of them
 * @example airOverTime([{ at: 0, celsius: 21.1, humidity: 50 }, { at: 7 * 864e5, celsius: 21.1, humidity: 38 }], 8 * 864e5)
 *   // => { value: 8.3 }
 * @source Wood handbook (FPL-GTR-190), Eq. 4-5; the mean over a month, and that older readings don't count, are assumptions
 */
export function airOverTime(readings: readonly (Air & { readonly at: number })[], now: number): Outcome<Worked> {
  if (readings.length === 0) return problem('readings', 'No reading of the air yet.');
  const age = (at: number) => Math.abs(now - at) / 1000;
  const recent = readings.filter(({ at }) => age(at) <= monthSeconds);
  const newest = seconds(Math.min(...readings.map(({ at }) => age(at))));
  const time = seconds(monthSeconds);
  if (recent.length === 0) return problem('readings', phrase`The air was last read ${newest} ago: read it again.`);
  const found = recent.map((air) => equilibriumMoisture(air));
  const wrong = found.find(isProblem);
  if (wrong) return wrong;
  const sound = found as readonly Worked[];
  const values = sound.map((one) => one.value);
  const value = values.reduce((sum, one) => sum + one, 0) / values.length;
  const mean = workingStep(
    'equilibrium moisture',
    phrase`mean of ${count(values.length)} readings within ${time} by the sorption equation, ${percent(Math.min(...values))} to ${percent(Math.max(...values))}`,
    percent(value),
  );
  const working = sound[0]?.working;
  return {
    value,
    working: {
      steps: values.length > 1 ? [mean] : (working?.steps ?? []),
      holds: phrase`Readings of the last ${time}, the newest ${newest} old; species differ by about half a percent.`,
      sources: [...(working?.sources ?? []), 'assumption'],
    },
  };
}
