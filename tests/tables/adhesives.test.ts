import { describe, expect, it } from 'vitest';
import type { AdhesivePhase } from '../../src/core/gluing/adhesive.ts';
import { adhesiveNames, findAdhesive } from '../../src/tables/adhesive-names.ts';
import { adhesives } from '../../src/tables/adhesives.ts';
import { sources } from '../../src/tables/sources.ts';

describe('adhesives', () => {
  it('has the kinds of the trade, each once', () => {
    expect(adhesives.map(({ id }) => id)).toEqual([
      'pva-interior',
      'pva-water-resistant',
      'polyurethane',
      'hide-liquid',
      'hide-hot',
      'epoxy-fast',
      'epoxy-slow',
      'urea-resin',
      'casein',
    ]);
  });
  describe.each(adhesives.map((row) => [row.id, row] as const))('%s', (_, row) => {
    it('says that its figures are not from one source read', () => {
      expect(['common-practice', 'from-memory']).toContain(sources[row.source].kind);
    });
    it.each(Object.keys(row.seconds) as AdhesivePhase[])('has %s as a range in order', (phase) => {
      const { least, most } = row.seconds[phase];
      expect(least).toBeGreaterThan(0);
      expect(most).toBeGreaterThanOrEqual(least);
    });
    it('has its times in the order in which they come', () => {
      const { open, clamp, cure } = row.seconds;
      expect(clamp.least).toBeGreaterThan(open.least);
      expect(cure.most).toBeGreaterThanOrEqual(clamp.most);
    });
    it('has figures that a bench would know', () => {
      expect(row.leastCelsius).toBeGreaterThanOrEqual(4);
      expect(row.leastCelsius).toBeLessThan(20);
      // Two thin films or one thick: 0.1 to 0.4 mm of glue, at about the density of water.
      expect(row.gramsPerM2.least).toBeGreaterThanOrEqual(100);
      expect(row.gramsPerM2.most).toBeLessThanOrEqual(400);
      expect(row.kgPerM3).toBeGreaterThan(1000);
      expect(row.kgPerM3).toBeLessThan(1400);
      expect(row.pressureShare > 0 && row.pressureShare <= 1).toBe(true);
      // Only a glue that fills gaps holds without being pressed thin.
      expect(row.pressureShare < 1).toBe(row.gapFilling === 'good');
    });
    it('defers to the data sheet', () => {
      expect(row.cautions.map(({ text }) => text)).toContain('The label and the adhesive’s data sheet come first.');
    });
    it('is found by its id, its name and its other names, in any order of words', () => {
      for (const name of [row.id, row.name, ...(adhesiveNames[row.id] ?? [])]) expect(findAdhesive(name)).toBe(row);
      expect(findAdhesive(row.name.split(/\W+/).reverse().join(' ').toUpperCase())).toBe(row);
    });
  });
  it('finds none by a word that it has not', () => {
    expect(findAdhesive('chewing gum')).toBeUndefined();
    expect(findAdhesive('')).toBeUndefined();
  });
});
