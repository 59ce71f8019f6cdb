import { afterEach, expect, test } from 'vitest';
import { readLength, writeLength } from '../../src/ui/length-text.ts';
import { units } from '../../src/ui/units.ts';

afterEach(() => {
  units.value = { unit: 'mm', nearest: 16 };
});

test('what was typed finer than the maker reads is written as it was typed', () => {
  units.value = { unit: 'in', nearest: 16 };
  for (const text of ['3/32', '1/64', '5 3/4', '12', '0']) expect(writeLength(readLength(text) as number)).toBe(text);
  // 2.2 mm is no fraction: 1.386 sixteenths, by hand.
  expect(writeLength(2.2)).toBe('1/16');
  expect(writeLength(0.2)).toBe('0.008');
  units.value = { unit: 'mm', nearest: 16 };
  for (const text of ['146.1', '0.5', '19']) expect(writeLength(readLength(text) as number)).toBe(text);
  expect(writeLength(0.05)).toBe('0.05');
});
