import { units } from './units.ts';

/** Temperatures are typed in the maker's own degrees: those that go with inches, or with millimetres. */
export const degreesSign = (): string => (units.value.unit === 'in' ? '°F' : '°C');
export const toCelsius = (typed: number): number => (units.value.unit === 'in' ? (typed - 32) / 1.8 : typed);
export const fromCelsius = (celsius: number): number => (units.value.unit === 'in' ? celsius * 1.8 + 32 : celsius);
