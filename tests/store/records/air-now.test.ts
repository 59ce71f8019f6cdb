import { expect, test } from 'vitest';
import { airNow, latestAir } from '../../../src/store/records/air-now.ts';

const hour = 3_600_000;
const air = [
  { at: 10 * hour, celsius: 18, humidity: 45 },
  { at: 30 * hour, celsius: 16, humidity: 60 },
  { at: 20 * hour, celsius: 21, humidity: 40 },
];

test('the newest reading counts, whatever the order in which they were noted', () => {
  expect(latestAir({ air })?.celsius).toBe(16);
  expect(latestAir({})).toBeUndefined();
  expect(latestAir({ air: [...air, { at: 30 * hour, celsius: 17, humidity: 55 }] })?.celsius).toBe(17);
});

test('after a day it says nothing of now', () => {
  expect(airNow({ air }, 54 * hour)?.celsius).toBe(16);
  expect(airNow({ air }, 54 * hour + 1)).toBeUndefined();
  expect(airNow({}, 0)).toBeUndefined();
  // Read under a clock that was a year ahead.
  expect(airNow({ air: [...air, { at: 9_000 * hour, celsius: 30, humidity: 50 }] }, 54 * hour)?.celsius).toBe(16);
});
