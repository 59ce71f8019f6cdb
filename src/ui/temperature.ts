import { badNumber } from '../core/answer/bad-number.ts';
import { checked } from '../core/answer/checked.ts';
import { parseNumber } from '../core/answer/parse-number.ts';
import { isProblem, type Outcome } from '../core/answer/problem.ts';
import { units } from './units.ts';

/** Temperatures are typed in the maker's own degrees: those that go with inches, or with millimetres. */
export const degreesSign = (): string => (units.value.unit === 'in' ? '°F' : '°C');
export const toCelsius = (typed: number): number => (units.value.unit === 'in' ? (typed - 32) / 1.8 : typed);
export const fromCelsius = (celsius: number): number => (units.value.unit === 'in' ? celsius * 1.8 + 32 : celsius);

/** Reads the maker's own degrees as degrees Celsius; of all that is typed, a temperature alone may lie below 0. */
export function parseDegrees(text: string): Outcome<number> {
  const size = text.trim().replace(/^[-−] ?/, '');
  const typed = parseNumber(size);
  return isProblem(typed) ? typed : toCelsius(size === text.trim() ? typed : -typed);
}

/** Reads a temperature that a shop or its wood can have, in degrees Celsius. */
export const readTemperature = (text: string): Outcome<number> =>
  checked(parseDegrees(text), (celsius) =>
    badNumber('', 'The temperature', celsius, 'celsius', { least: -20, most: 60 }),
  );
