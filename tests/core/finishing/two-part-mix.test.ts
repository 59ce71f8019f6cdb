import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sayPhrase } from '../../../src/core/answer/say-phrase.ts';
import { type MixRatio, mixFor, potLifeBatches, potLifeUsed } from '../../../src/core/finishing/two-part-mix.ts';
import { solved } from '../gluing/helpers.ts';

const threeToOne: MixRatio = { a: 3, b: 1, by: 'volume' };
const byMass: MixRatio = { a: 2, b: 1, by: 'mass', densityA: 1.2, densityB: 0.9 };

describe('mixing two parts', () => {
  it('splits a total by volume', () => {
    expect(solved(mixFor('all', 0.2, threeToOne)).value).toEqual({
      litresA: expect.closeTo(0.15, 12),
      litresB: expect.closeTo(0.05, 12),
      litres: expect.closeTo(0.2, 12),
    });
  });
  it('says what was given, and by what it was parted', () => {
    const said = (...asked: Parameters<typeof mixFor>) =>
      solved(mixFor(...asked)).working.steps.map(({ by }) => sayPhrase(by, { unit: 'mm', nearest: 16 }))[0];
    expect(said('all', 0.2, threeToOne)).toBe('3 to 1 by volume, of 200 ml in all.');
    expect(said('B', 0.04, byMass)).toBe('2 to 1 by mass, at 1.2 and 0.9 kg/L, of 40 ml B.');
  });
  it('by mass puts the ratio on the scale, not in the cup', () => {
    const { gramsA = 0, gramsB = 0, litres, litresA, litresB } = solved(mixFor('all', 0.5, byMass)).value;
    expect(gramsA / gramsB).toBeCloseTo(2, 9);
    expect(litresA + litresB).toBeCloseTo(litres, 12);
    expect(litres).toBeCloseTo(0.5, 12);
    expect(litresA / litresB).not.toBeCloseTo(2, 1);
  });
  it('answers what 40 ml of B will make', () => {
    expect(solved(mixFor('B', 0.04, threeToOne)).value).toMatchObject({
      litresA: expect.closeTo(0.12, 12),
      litres: expect.closeTo(0.16, 12),
    });
    expect(solved(mixFor('A', 0.12, threeToOne)).value.litresB).toBeCloseTo(0.04, 12);
  });
  it('goes there and back again', () => {
    const some = fc.double({ min: 0.1, max: 20, noNaN: true });
    fc.assert(
      fc.property(some, some, fc.constantFrom('volume', 'mass'), (a, b, by) => {
        const ratio = { a, b, by, densityA: 1.1, densityB: 0.95 } as const;
        const { litresB } = solved(mixFor('all', 1, ratio)).value;
        return Math.abs(solved(mixFor('B', litresB, ratio)).value.litres - 1) < 1e-9;
      }),
    );
  });
  it.each([
    [{ ...threeToOne, b: 0 }, 'ratio.b'],
    [{ ...threeToOne, a: -1 }, 'ratio.a'],
    [{ a: 2, b: 1, by: 'mass' } as const, 'ratio.densityA'],
    [{ ...byMass, densityB: 900 }, 'ratio.densityB'],
  ])('refuses the ratio %j', (ratio, field) => {
    expect(mixFor('all', 0.2, ratio)).toMatchObject({ kind: 'problem', field });
    expect(mixFor('A', 0.2, ratio)).toMatchObject({ kind: 'problem', field });
  });
  it('refuses amounts that make no sense', () => {
    expect(mixFor('all', 0, threeToOne)).toMatchObject({ field: 'litres' });
    expect(mixFor('B', Number.NaN, threeToOne)).toMatchObject({ field: 'litres' });
  });
});

describe('potLifeBatches', () => {
  it('mixes a cabinet in two batches', () => {
    expect(solved(potLifeBatches(3600, 2700)).value).toBe(2);
  });
  it('keeps each batch within the usable pot life, with no batch too many', () => {
    fc.assert(
      fc.property(fc.integer({ min: 250, max: 15000 }), fc.integer({ min: 600, max: 7200 }), (work, potLife) => {
        const batches = solved(potLifeBatches(work, potLife)).value;
        const usable = potLife * potLifeUsed;
        return work / batches <= usable + 1e-6 && (batches === 1 || (batches - 1) * usable < work);
      }),
    );
  });
  it.each([
    [0, 2700, 'workSeconds'],
    [Number.NaN, 2700, 'workSeconds'],
    [6000, 0, 'potLifeSeconds'],
    [2e6, 60, 'potLifeSeconds'],
  ])('refuses %d, %d', (work, potLife, field) => {
    expect(potLifeBatches(work, potLife)).toMatchObject({ kind: 'problem', field });
  });
});
