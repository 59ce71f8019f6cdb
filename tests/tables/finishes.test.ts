import { describe, expect, it } from 'vitest';
import { mostCoats } from '../../src/core/finishing/finish-amount.ts';
import { grits } from '../../src/tables/abrasives.ts';
import { finishById, finishes } from '../../src/tables/finishes.ts';
import { sources } from '../../src/tables/sources.ts';

const shelf = grits.map(({ grit }) => grit);

describe('finishes', () => {
  it('has the kinds of the trade, each once', () => {
    expect(finishes.map(({ id }) => id)).toEqual([
      'hard-wax-oil',
      'wiping-varnish',
      'oil-varnish',
      'water-borne',
      'shellac',
      'lacquer-brushed',
      'wax',
      'paint',
    ]);
    for (const row of finishes) expect(finishById(row.id)).toBe(row);
    expect(finishById('tar')).toBeUndefined();
  });
  it.each(finishes)('$name has ranges in order, and says that they are habits of the trade', (row) => {
    expect(sources[row.source].kind).toBe('common-practice');
    const { coverage, coats, waitSeconds, useAfterSeconds, cureSeconds, wipeOffSeconds } = row;
    for (const { least, most } of [
      coverage,
      coats,
      waitSeconds,
      useAfterSeconds,
      cureSeconds,
      wipeOffSeconds ?? coats,
    ]) {
      expect(least).toBeGreaterThan(0);
      expect(most).toBeGreaterThanOrEqual(least);
    }
    expect(coats.most).toBeLessThanOrEqual(mostCoats);
    expect(waitSeconds.least).toBeLessThanOrEqual(useAfterSeconds.least);
    expect(useAfterSeconds.most).toBeLessThanOrEqual(cureSeconds.most);
    expect(row.firstCoat.openPores).toBeGreaterThanOrEqual(row.firstCoat.closedPores);
    expect(row.firstCoat.closedPores).toBeGreaterThanOrEqual(1);
    expect(shelf).toContain(row.bareGrit);
    // A coat is rubbed finer than its wood.
    expect(row.betweenGrit ?? Number.POSITIVE_INFINITY).toBeGreaterThan(row.bareGrit);
    expect(row.cautions.at(-1)?.text).toContain('safety sheet come first');
  });
  /** Share of the wet film that stays, percent of volume: habits of the trade, as the table's. */
  const solids: Readonly<Record<string, readonly [least: number, most: number]>> = {
    'hard-wax-oil': [70, 100],
    'wiping-varnish': [20, 35],
    'oil-varnish': [45, 60],
    'water-borne': [28, 38],
    shellac: [12, 25],
    'lacquer-brushed': [20, 30],
    wax: [30, 50],
    paint: [35, 50],
  };
  it('leaves films that a coat can be: 5 to 100 micrometres dry, by the geometry of solids and spreading rate', () => {
    for (const { id, coverage } of finishes) {
      const [least, most] = solids[id] ?? [];
      expect((Number(most) * 10) / coverage.least).toBeLessThan(100);
      expect((Number(least) * 10) / coverage.most).toBeGreaterThan(5);
    }
  });
  it('knows which rags can burn by themselves: drying oils and varnishes of them', () => {
    const oily = finishes.filter(({ dryingOil }) => dryingOil).map(({ id }) => id);
    expect(oily).toEqual(['hard-wax-oil', 'wiping-varnish', 'oil-varnish']);
  });
});

it('grits run from coarse to fine, each marked', () => {
  expect(shelf).toEqual([...shelf].sort((a, b) => a - b));
  // Finer ones nobody could pick.
  expect(shelf.at(-1)).toBe(Math.max(...finishes.map(({ bareGrit }) => bareGrit)));
  expect(grits.every(({ source, use }) => source === 'common-practice' && use !== '')).toBe(true);
});
