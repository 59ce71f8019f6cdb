import { afterEach, expect, test } from 'vitest';
import { isProblem } from '../../src/core/answer/problem.ts';
import { parseDegrees, readTemperature } from '../../src/ui/temperature.ts';
import { units } from '../../src/ui/units.ts';

afterEach(() => {
  units.value = { unit: 'mm', nearest: 16 };
});

test('a shed below freezing can be read, in either degrees', () => {
  expect(['-5', '−5,5', ' - 5', '0', '20'].map(parseDegrees)).toEqual([-5, -5.5, -5, 0, 20]);
  units.value = { unit: 'in', nearest: 16 };
  // −4 °F is −20 °C, 32 °F is 0 °C (NIST SP 811, appendix B).
  expect(parseDegrees('-4')).toBeCloseTo(-20, 9);
  expect(parseDegrees('32')).toBe(0);
});

test('what no shop can be is refused', () => {
  for (const text of ['', '-', '--5', '5-', 'cold', '-30', '70']) {
    expect(isProblem(readTemperature(text)), text).toBe(true);
  }
});
