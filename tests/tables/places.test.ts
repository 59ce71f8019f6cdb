import { expect, it } from 'vitest';
import { climates } from '../../src/tables/climates.ts';
import { interiorTargets } from '../../src/tables/interior-targets.ts';
import { sources } from '../../src/tables/sources.ts';
import { outside } from '../setup/outside.ts';

it("holds the handbook's interior averages, inside their bands", () => {
  outside({
    what: 'moisture indoors in most areas of the United States, the dry southwest, damp and warm coasts, %',
    source: 'wood-handbook',
    at: 'Figure 13-1',
    expected: [8, 6, 11],
    got: interiorTargets.map((one) => one.percent),
  });
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
