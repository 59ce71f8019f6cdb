import { afterEach, expect, test } from 'vitest';
import { range } from '../../src/core/answer/range.ts';
import { sayRange } from '../../src/ui/say-range.ts';
import { units } from '../../src/ui/units.ts';

afterEach(() => {
  units.value = { unit: 'mm', nearest: 16 };
});

test.each([
  // What each end is, said by itself, is what the range must say of it.
  [300, 600, '5 to 10 min'],
  [1800, 7200, '30 min to 2 h'],
  [150, 300, '2 min 30 s to 5 min'],
  [270, 540, '4 min 30 s to 9 min'],
  [4800, 7200, '1 h 20 min to 2 h'],
  [4800, 8400, '1 h 20 min to 2 h 20 min'],
  [3600, 3600, '1 h'],
])('from %i s to %i s', (least, most, said) => {
  expect(sayRange(range(least, most), 'seconds')).toBe(said);
});

test('a unit of two words is said once as well', () => {
  units.value = { unit: 'in', nearest: 16 };
  // 1 US fluid ounce is 29.5735 ml (NIST SP 811): 0.3 L is 10.1 of them, 0.414 L 14.
  expect(sayRange(range(0.3, 0.414), 'litres')).toBe('10.1 to 14 fl oz');
});
