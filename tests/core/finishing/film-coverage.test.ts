import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { filmCoverage } from '../../../src/core/finishing/film-coverage.ts';
import { outside } from '../../setup/outside.ts';
import { solved } from '../gluing/helpers.ts';

/** m2 per litre in square feet per US gallon, by a unit library. */
const ft2PerGallon = (m2PerLitre: number) =>
  unit(m2PerLitre, 'm2').toNumber('sqft') * (unit(1, 'gallon').toNumber('m3') / unit(1, 'litre').toNumber('m3'));

describe('filmCoverage', () => {
  it('covers 1604 square feet per gallon at one mil, by a unit library: 231 cubic inches of pure solids', () => {
    const micrometres = unit(1, 'mil').toNumber('m') * 1e6;
    const found = ft2PerGallon(solved(filmCoverage(100, micrometres)).value);
    const got = { what: 'a gallon of pure solids, 1 mil thick, in units of mathjs: sq ft', got: found };
    // The trade's figure is rounded to a whole square foot.
    outside({ ...got, source: 'common-practice', expected: 1604, tolerance: 0.5 });
    // 231 in3 spread 0.001 in thick; mathjs rounds the gallon to ten digits.
    outside({ ...got, source: 'nist-sp811', at: 'appendix B', expected: 231 / 0.001 / 144, tolerance: 5e-7 });
  });
  it('covers 1 m2 with a litre 1 mm thick, and half of that with half the solids', () => {
    expect(solved(filmCoverage(100, 1000)).value).toBe(1);
    expect(solved(filmCoverage(50, 25)).value).toBe(20);
  });
  it.each([
    [0, 25, 'solids'],
    [101, 25, 'solids'],
    [50, 0, 'film'],
    [50, Number.NaN, 'film'],
  ])('refuses %d percent at %d', (solids, film, field) => {
    expect(filmCoverage(solids, film)).toMatchObject({ kind: 'problem', field });
  });
});
