import { describe, expect, it } from 'vitest';
import { learnPace, usualPace } from '../../../src/core/gluing/pace.ts';

describe('learnPace', () => {
  it('weighs a large run more than a small one', () => {
    const runs = [
      { areaM2: 0.1, seams: 2, clamps: 5, spreadSeconds: 120, closeSeconds: 60 },
      { areaM2: 0.3, seams: 4, clamps: 5, spreadSeconds: 480, closeSeconds: 60 },
    ];
    const pace = learnPace(runs);
    expect(pace).toEqual({ secondsPerM2: 1500, secondsPerSeam: 20, secondsPerClamp: usualPace.secondsPerClamp });
  });

  it('keeps the pace before where nothing was timed', () => {
    expect(learnPace([])).toEqual(usualPace);
    const before = { secondsPerM2: 1, secondsPerSeam: 2, secondsPerClamp: 3 };
    expect(learnPace([{ areaM2: 1, seams: 1, clamps: 2, clampSeconds: 80 }], before)).toEqual({
      ...before,
      secondsPerClamp: 40,
    });
  });

  it.each([
    [{ areaM2: 0, seams: 1, clamps: 1, spreadSeconds: 5 }, 'runs.0.areaM2'],
    [{ areaM2: 1, seams: -1, clamps: 1, closeSeconds: 5 }, 'runs.0.seams'],
    [{ areaM2: 1, seams: 1, clamps: 1, clampSeconds: -5 }, 'runs.0.clampSeconds'],
    [{ areaM2: 1, seams: 1, clamps: 1, spreadSeconds: Number.NaN }, 'runs.0.spreadSeconds'],
  ])('refuses %j', (run, field) => {
    expect(learnPace([run])).toMatchObject({ kind: 'problem', field });
  });
});
