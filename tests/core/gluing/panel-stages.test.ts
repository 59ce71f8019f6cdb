import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { panelStages } from '../../../src/core/gluing/panel-stages.ts';
import { solved } from './helpers.ts';

const lid = {
  id: 'lid',
  name: 'Lid',
  length: 1000,
  thickness: 22,
  groups: [
    [90, 110],
    [100, 120],
  ],
};

describe('panelStages', () => {
  it('glues a lid in two sub-panels, then joins them', () => {
    const stages = solved(panelStages(lid));
    const seam = { length: 1000, width: 22 };
    expect(stages).toEqual([
      { id: 'lid/1', name: 'Lid, sub-panel 1', needs: [], seams: [seam], width: 200, outerBoard: 90 },
      { id: 'lid/2', name: 'Lid, sub-panel 2', needs: [], seams: [seam], width: 220, outerBoard: 100 },
      { id: 'lid', name: 'Lid', needs: ['lid/1', 'lid/2'], seams: [seam], width: 420, outerBoard: 200 },
    ]);
  });
  it('needs no stage for one strip, one for one group, and none for a group of one', () => {
    expect(panelStages({ ...lid, groups: [[300]] })).toEqual([]);
    expect(solved(panelStages({ ...lid, groups: [[90, 110, 100, 120]] }))).toMatchObject([
      { id: 'lid', needs: [], seams: [{}, {}, {}] },
    ]);
    expect(solved(panelStages({ ...lid, groups: [[90], [110, 100, 120]] }))).toMatchObject([
      { id: 'lid/2' },
      { id: 'lid', needs: ['lid/2'], outerBoard: 90 },
    ]);
  });
  it('glues each seam of the panel once, in an order that can be kept', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 6 }), (sizes) => {
        const number = sizes.reduce((sum, size) => sum + size, 0);
        const stages = solved(panelStages({ ...lid, groups: sizes.map((size) => Array<number>(size).fill(80)) }));
        const glued = new Set<string>();
        for (const { id, needs } of stages) {
          if (!needs.every((needed) => glued.has(needed))) return false;
          glued.add(id);
        }
        return stages.flatMap(({ seams }) => seams).length === number - 1;
      }),
    );
  });
  it.each([
    [{ thickness: 0 }, 'thickness'],
    [{ length: Number.NaN }, 'length'],
    [{ groups: [] }, 'groups'],
    [{ groups: [[90, -1]] }, 'groups.0.1'],
    [{ groups: [[90], []] }, 'groups'],
  ])('refuses %j', (wrong, field) => {
    expect(panelStages({ ...lid, ...wrong })).toMatchObject({ kind: 'problem', field });
  });
});
