import { badNumber } from '../answer/bad-number.ts';
import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome, Problem } from '../answer/problem.ts';
import { celsius as inCelsius, percent } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';

/** The air that wood lives in. */
export interface Air {
  readonly celsius: number;
  /** Relative humidity in percent. */
  readonly humidity: number;
}

const coldest = -40;
const hottest = 130;

/** Why a temperature can't be worked with, if it can't. */
export function temperatureProblem(field: string, celsius: number): Problem | undefined {
  return badNumber(field, 'The temperature', celsius, 'celsius', { least: coldest, most: hottest });
}

/** The equation itself, on numbers known to be in range: percent moisture from degrees Celsius and a fraction of humidity. */
function hailwoodHorrobin(celsius: number, humidityFraction: number): number {
  const t = celsius;
  const w = 349 + 1.29 * t + 0.0135 * t ** 2;
  const k = 0.805 + 0.000736 * t - 0.00000273 * t ** 2;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t ** 2;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t ** 2;
  const kh = k * humidityFraction;
  const dissolved = kh / (1 - kh);
  const hydrated = (k1 * kh + 2 * k1 * k2 * kh ** 2) / (1 + k1 * kh + k1 * k2 * kh ** 2);
  return (1800 / w) * (dissolved + hydrated);
}

/**
 * The moisture content that wood settles at in air of a steady temperature and humidity.
 *
 * @param air temperature in degrees Celsius (-40 to 130) and relative humidity in percent (0 to 100)
 * @returns moisture content in percent of the ovendry mass
 * @valid any wood, to about half a percent; species differ a little, and wood that is drying settles somewhat higher
 *   than wood that is taking up moisture. The handbook's table spans -1 to 132 degrees; below freezing it is
 *   extrapolated
 * @errors a `Problem` on `celsius` or `humidity` out of range or not a number
 * @example equilibriumMoisture({ celsius: 21.1, humidity: 50 }) // => { value: 9.2 }
 * @source Wood handbook (FPL-GTR-190), Eq. 4-5, and Simpson 1998 (FPL-RN-0268), after Hailwood and Horrobin 1946
 */
export function equilibriumMoisture(air: Air): Outcome<Worked> {
  const wrong =
    temperatureProblem('celsius', air.celsius) ??
    badNumber('humidity', 'The relative humidity', air.humidity, 'percent', { least: 0, most: 100 });
  if (wrong) return wrong;
  return oneStep(
    'equilibrium moisture',
    phrase`sorption equation at ${inCelsius(air.celsius)} and ${percent(air.humidity)} humidity`,
    percent(hailwoodHorrobin(air.celsius, air.humidity / 100)),
    ['wood-handbook', 'simpson-1998'],
    phrase`Air steady for weeks; species differ by about half a percent.`,
  );
}
