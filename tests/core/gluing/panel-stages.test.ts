import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { panelStages } from '../../../src/core/gluing/panel-stages.ts';
import { stageOrder } from '../../../src/core/gluing/stage-order.ts';
import { solved } from './helpers.ts';

const lid = { id: 'lid', name: 'Lid', length: 1000, thickness: 22, strips: [90, 110, 100, 120] };

describe('panelStages', () => {
  it('glues a lid in two sub-panels, then joins them', () => {
    const stages = solved(panelStages(lid, [2, 2]));
    const seam = { length: 1000, width: 22 };
    expect(stages).toEqual([
      { id: 'lid/1', name: 'Lid, sub-panel 1', needs: [], seams: [seam], width: 200, outerBoard: 90 },
      { id: 'lid/2', name: 'Lid, sub-panel 2', needs: [], seams: [seam], width: 220, outerBoard: 100 },
      { id: 'lid', name: 'Lid', needs: ['lid/1', 'lid/2'], seams: [seam], width: 420, outerBoard: 200 },
    ]);
  });
  it('needs no stage for one strip, one for one group, and none for a group of one', () => {
    expect(panelStages({ ...lid, strips: [300] }, [1])).toEqual([]);
    expect(solved(panelStages(lid, [4]))).toMatchObject([{ id: 'lid', needs: [], seams: [{}, {}, {}] }]);
    expect(solved(panelStages(lid, [1, 3]))).toMatchObject([
      { id: 'lid/2' },
      { id: 'lid', needs: ['lid/2'], outerBoard: 90 },
    ]);
  });
  it('glues each seam of the panel once, in an order that can be kept', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 6 }), (groups) => {
        const number = groups.reduce((sum, size) => sum + size, 0);
        const stages = solved(panelStages({ ...lid, strips: Array<number>(number).fill(80) }, groups));
        return stages.flatMap(({ seams }) => seams).length === number - 1 && !isProblem(stageOrder(stages));
      }),
    );
  });
  it.each([
    [{ thickness: 0 }, [2, 2], 'thickness'],
    [{ length: Number.NaN }, [2, 2], 'length'],
    [{ strips: [] }, [], 'strips'],
    [{ strips: [90, -1] }, [2], 'strips.1'],
    [{}, [2, 1], 'groups'],
    [{}, [4, 0], 'groups.1'],
  ])('refuses %j in groups %j', (wrong, groups, field) => {
    expect(panelStages({ ...lid, ...wrong }, groups)).toMatchObject({ kind: 'problem', field });
  });
});
