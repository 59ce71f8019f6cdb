import { badNumber } from '../answer/bad-number.ts';
import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { celsius as degrees, factor, percent } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';

/**
 * By what a finish's waits are multiplied in today's air: twice as long for each 10 degrees Celsius below 20, and
 * longer above 50 percent humidity, up to twice at 85. Never shorter than the can says.
 *
 * @param celsius degrees Celsius
 * @param humidity relative humidity, percent
 * @returns a factor of at least 1
 * @valid 10 to 35 degrees, up to 85 percent. Shellac and lacquer cloud in damp air long before that
 * @errors air outside that range: wait for a better day
 * @example airFactor(15, 50) // => { value: 1.41 }
 * @source an assumption of this app, stated where it is shown
 */
export function airFactor(celsius: number, humidity: number): Outcome<Worked> {
  const bad =
    badNumber('celsius', 'The temperature', celsius, 'celsius', { least: 10, most: 35 }) ??
    badNumber('humidity', 'The humidity', humidity, 'percent', { least: 0, most: 85 });
  if (bad) return bad;
  const cold = celsius < 20 ? 2 ** ((20 - celsius) / 10) : 1;
  const damp = humidity > 50 ? 1 + (humidity - 50) / 35 : 1;
  return oneStep(
    'factor of the waits',
    phrase`Doubled at ${degrees(10)}, from ${degrees(20)} down; doubled at ${percent(85)} humidity, from ${percent(50)} up. Never shorter than the can says.`,
    factor(cold * damp),
    ['assumption'],
  );
}
