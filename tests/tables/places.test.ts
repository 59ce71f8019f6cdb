import { expect, it } from 'vitest';
import { climates } from '../../src/tables/climates.ts';
import { interiorTargets } from '../../src/tables/interior-targets.ts';
import { sources } from '../../src/tables/sources.ts';

// Wood handbook (FPL-GTR-190), Figure 13-1: 8 % in most areas of the United States, 6 % in the dry southwest, 11 % on damp, warm coasts.
it("holds the handbook's interior averages, inside their bands", () => {
  expect(interiorTargets.map((one) => one.percent)).toEqual([8, 6, 11]);
  for (const { percent, band, source } of interiorTargets) {
    expect(band.least).toBeLessThan(percent);
    expect(band.most).toBeGreaterThan(percent);
    expect(sources[source].kind).toBe('published');
    expect(sources[band.source].kind).toBe('from-memory');
  }
});

it('names each climate once', () => {
  expect(new Set(climates.map((one) => one.id)).size).toBe(climates.length);
});
