import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { celsius as inCelsius, percent } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { hailwoodHorrobin, temperatureProblem } from './equilibrium-moisture.ts';
import { moistureProblem } from './moisture-problem.ts';

// Each halving gains one binary digit: after fifty, less than 1e-13 percent of humidity is left open.
const halvings = 50;

/**
 * The relative humidity at which wood would settle at a wanted moisture content: what to hold the shop at.
 *
 * @param wanted temperature in degrees Celsius (-40 to 130) and moisture content in percent
 * @returns relative humidity in percent
 * @valid as `equilibriumMoisture`, of which it is the inverse (found by halving, since the equation rises steadily with
 *   humidity)
 * @errors a `Problem` on `celsius`; on `percent` when no humidity up to 100 % leads to it
 * @example humidityForMoisture({ celsius: 21.1, percent: 9.24 }) // => { value: 50.0 }
 * @source Wood handbook (FPL-GTR-190), Eq. 4-5
 */
export function humidityForMoisture(wanted: { readonly celsius: number; readonly percent: number }): Outcome<Worked> {
  const wrong = temperatureProblem('celsius', wanted.celsius) ?? moistureProblem('percent', wanted.percent);
  if (wrong) return wrong;
  const most = hailwoodHorrobin(wanted.celsius, 1);
  if (wanted.percent > most) {
    return problem('percent', 'At {temperature} even saturated air brings wood to {most} only. Enter less.', {
      temperature: inCelsius(wanted.celsius),
      most: percent(most),
    });
  }
  let low = 0;
  let high = 1;
  for (let halving = 0; halving < halvings; halving++) {
    const middle = (low + high) / 2;
    if (hailwoodHorrobin(wanted.celsius, middle) < wanted.percent) low = middle;
    else high = middle;
  }
  return oneStep(
    'relative humidity',
    phrase('the humidity at which the sorption equation gives {moisture} at {temperature}', {
      moisture: percent(wanted.percent),
      temperature: inCelsius(wanted.celsius),
    }),
    percent(100 * high),
    ['wood-handbook'],
    phrase('Air that stays steady for weeks; species differ by about half a percent.'),
  );
}
