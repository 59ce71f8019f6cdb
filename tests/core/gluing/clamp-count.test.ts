import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { clampCount, clampPlaces } from '../../../src/core/gluing/clamp-count.ts';
import { solved } from './helpers.ts';

const seam = { length: 1200, width: 20 };
const work = { seams: [seam], kPa: 1000, clampForce: 2000 };

describe('clampCount', () => {
  it('is force over force, rounded up', () => {
    // 1.2 m x 0.02 m x 1 MPa = 24 kN.
    expect(solved(clampCount(work)).value).toEqual({
      force: 24000,
      clamps: 12,
      spacing: 100,
      leastForSpread: 1,
    });
    expect(solved(clampCount({ ...work, clampForce: 1999 })).value.clamps).toBe(13);
  });
  it('presses parallel seams with the same clamps', () => {
    expect(solved(clampCount({ ...work, seams: [seam, seam, seam] })).value).toEqual(solved(clampCount(work)).value);
  });
  it('takes more clamps where narrow boards do not spread the pressure, fewer with cauls', () => {
    const strong = { ...work, clampForce: 10000 };
    // 2 x 50 mm a clamp: 12 of them.
    const narrow = solved(clampCount({ ...strong, outerBoard: 50 })).value;
    expect(narrow).toMatchObject({ clamps: 12, spacing: 100 });
    expect(solved(clampCount({ ...strong, outerBoard: 50, caul: 50 })).value).toMatchObject({
      clamps: 6,
    });
    expect(solved(clampCount({ ...strong, outerBoard: 300 })).value).toMatchObject({ clamps: 3 });
  });
  it('always has force enough, none to spare, and no gap wider than the spread', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 50, max: 3000 }),
        fc.integer({ min: 10, max: 60 }),
        fc.integer({ min: 2000, max: 8000 }),
        fc.integer({ min: 20, max: 300 }),
        (length, width, clampForce, outerBoard) => {
          const found = clampCount({ seams: [{ length, width }], kPa: 1200, clampForce, outerBoard });
          if (isProblem(found)) return false;
          const { clamps, spacing, force, leastForSpread } = found.value;
          const enough = clamps * clampForce >= force - 1e-3 && spacing <= 2 * outerBoard + 1e-9;
          const spare = (clamps - 1) * clampForce >= force + 1e-3 && clamps > leastForSpread;
          return enough && !spare;
        },
      ),
    );
  });
  it.each([
    [{ seams: [] }, 'seams'],
    [{ clampForce: 0 }, 'clampForce'],
    [{ clampForce: 1 }, 'clampForce'],
    [{ kPa: -1 }, 'kPa'],
    [{ outerBoard: 0 }, 'outerBoard'],
    [{ caul: Number.NaN }, 'caul'],
  ])('refuses %j', (wrong, field) => {
    expect(clampCount({ ...work, ...wrong })).toMatchObject({ kind: 'problem', field });
  });
});

it('asks for one clamp at least, however small the seam', () => {
  const tiny = clampCount({ ...work, seams: [{ length: 1e-9, width: 20 }], outerBoard: 100 });
  expect(tiny).toMatchObject({ value: { clamps: 1, spacing: 1e-9, leastForSpread: 1 } });
});

it('clampPlaces puts clamps above and below by turns, half a space from the ends', () => {
  expect(clampPlaces(1200, 3)).toEqual([
    { at: 200, side: 'below' },
    { at: 600, side: 'above' },
    { at: 1000, side: 'below' },
  ]);
});
