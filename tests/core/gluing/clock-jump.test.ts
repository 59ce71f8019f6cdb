import { describe, expect, it } from 'vitest';
import { clockJump } from '../../../src/core/gluing/clock-jump.ts';

const hour = 3_600_000;
const says = (words: RegExp, seconds: number) => ({
  text: expect.stringMatching(words),
  quantities: { 0: { value: seconds, unit: 'seconds' } },
});
const before = { wall: Date.UTC(2026, 9, 25, 0, 30), steady: 1000, run: 'one' };
const later = (wall: number, steady: number, run = 'one') => ({
  wall: before.wall + wall,
  steady: before.steady + steady,
  run,
});

describe('clockJump', () => {
  it('sees none while both clocks go on alike, also across the end of daylight saving', () => {
    expect(clockJump(before, later(2 * hour, 2 * hour))).toBeUndefined();
    expect(clockJump(before, later(4000, 0))).toBeUndefined();
  });
  it('sees a clock set back a day', () => {
    expect(clockJump(before, later(-23 * hour, hour))).toEqual(says(/set back by \{0\}/, 86400));
  });
  it('sees a clock set on, or a sleep', () => {
    expect(clockJump(before, later(3 * hour, hour))).toEqual(says(/\{0\} ahead/, 7200));
  });
  it('can tell only a step back after a restart', () => {
    expect(clockJump(before, later(9 * hour, -500, 'two'))).toBeUndefined();
    expect(clockJump(before, later(-hour, 0, 'two'))).toEqual(says(/set back by \{0\}/, 3600));
  });
  it('tells nothing from a reading that is none', () => {
    expect(clockJump(before, later(Number.NaN, 0))).toBeUndefined();
  });
});
