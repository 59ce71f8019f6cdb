import { describe, expect, it } from 'vitest';
import { compareClamps } from '../../../src/core/gluing/clamps-owned.ts';
import { solved } from './helpers.ts';

const pipe = { name: 'pipe', count: 4, force: 4000, reach: 1500 };
const light = { name: 'light', count: 6, force: 1500, reach: 600 };

describe('compareClamps', () => {
  it('takes the strongest first, and no more than needed', () => {
    const found = solved(compareClamps({ force: 12000, leastForSpread: 2 }, 500, [light, pipe]));
    expect(found).toEqual({ take: [{ name: 'pipe', count: 3 }], force: 12000, missing: 0, missingForce: 0, helps: [] });
  });
  it('adds weaker ones, also where only the spread asks for them', () => {
    const found = solved(compareClamps({ force: 12000, leastForSpread: 6 }, 500, [light, pipe]));
    expect(found.take).toEqual([
      { name: 'pipe', count: 4 },
      { name: 'light', count: 2 },
    ]);
    expect(found.helps).toEqual([]);
  });
  it('leaves out those that do not reach, and says what helps', () => {
    const found = solved(compareClamps({ force: 20000, leastForSpread: 6 }, 900, [light, pipe]));
    expect(found).toMatchObject({ missing: 2, missingForce: 4000, take: [{ name: 'pipe', count: 4 }] });
    const helps = found.helps.map(({ text }) => text).join(' ');
    expect(helps).toMatch(/cauls/i);
    expect(helps).toMatch(/Stronger/);
    expect(helps).toMatch(/Two stages/);
  });
  it('does not speak of two stages when no clamp is too short, nor of cauls when only force is short', () => {
    const helps = solved(compareClamps({ force: 99000, leastForSpread: 1 }, 300, [light, pipe])).helps.map(
      (help) => help.text,
    );
    expect(helps.join(' ')).not.toMatch(/Two stages|cauls/);
  });
  it('copes with an empty rack', () => {
    expect(solved(compareClamps({ force: 5, leastForSpread: 1 }, 300, []))).toMatchObject({
      missing: 1,
      missingForce: 5,
    });
  });
  it.each([
    [0, [pipe], 'across'],
    [300, [{ ...pipe, count: -1 }], 'owned.0.count'],
    [300, [pipe, { ...pipe, force: 0 }], 'owned.1.force'],
    [300, [{ ...pipe, reach: Number.NaN }], 'owned.0.reach'],
  ])('refuses width %d with %j', (width, owned, field) => {
    expect(compareClamps({ force: 1, leastForSpread: 1 }, width, owned)).toMatchObject({ kind: 'problem', field });
  });
});
