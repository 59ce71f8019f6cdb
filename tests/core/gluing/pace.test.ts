import { describe, expect, it } from 'vitest';
import { learnPace, usualPace } from '../../../src/core/gluing/pace.ts';

describe('learnPace', () => {
  it('is all seconds over all that was done in them', () => {
    const timed = { spread: { seconds: 120 + 480, count: 0.1 + 0.3 }, close: { seconds: 120, count: 6 } };
    const { spread, ...others } = learnPace(timed) as typeof usualPace;
    // Doubles: 0.1 + 0.3 is rounded.
    expect(spread).toBeCloseTo(1500, 9);
    expect(others).toEqual({ close: 20, clamp: usualPace.clamp });
  });

  it('keeps the usual pace where nothing was timed', () => {
    expect(learnPace({})).toEqual(usualPace);
    expect(learnPace({ clamp: { seconds: 80, count: 2 } })).toEqual({ ...usualPace, clamp: 40 });
  });

  it.each([
    [{ spread: { seconds: 5, count: 0 } }, 'spread.count'],
    [{ close: { seconds: 5, count: -1 } }, 'close.count'],
    [{ clamp: { seconds: -5, count: 1 } }, 'clamp.seconds'],
    [{ spread: { seconds: Number.NaN, count: 1 } }, 'spread.seconds'],
  ])('refuses %j', (timed, field) => {
    expect(learnPace(timed)).toMatchObject({ kind: 'problem', field });
  });
});
