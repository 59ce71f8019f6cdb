import { describe, expect, it } from 'vitest';
import { breadboardEdges } from '../../../src/core/movement/breadboard-edges.ts';
import { outside } from '../../setup/outside.ts';
import { answered, cherry, seasons } from './woods.ts';

const table = { wood: cherry, width: 600, seasons, fixedAt: 300 };

describe('breadboardEdges', () => {
  it('says how far the panel stands out of the end or falls short', () => {
    const { dry, wet } = answered(breadboardEdges(table)).value;
    // Half the panel: 300 x 0.00248 x 2 and x 3.
    expect(dry.near).toBeCloseTo(-1.488, 9);
    // Doubles leave only rounding.
    outside({
      what: 'breadboard end of black cherry, 600 mm, middle peg fixed, 8 to 11 %: panel stands out, mm',
      source: 'wood-handbook',
      at: 'Table 13-5',
      expected: 2.232,
      got: wet.far,
      tolerance: 5e-10,
    });
    const aside = answered(breadboardEdges({ ...table, fixedAt: 200 })).value.wet;
    expect(aside.near + aside.far).toBeCloseTo(4.464, 9);
    expect(aside.near).toBeCloseTo(1.488, 9);
  });

  it('moves more at the edge that lies further from the fixed peg, and its working says how much', () => {
    const end = answered(breadboardEdges({ ...table, fixedAt: 60 }));
    // 540 of 600 mm lie beyond it: 540 x 0.00248 x 3.
    expect(end.value.wet.far).toBeCloseTo(540 * 0.00248 * 3, 9);
    expect(end.working.steps.at(-1)?.gives.value).toBeCloseTo(end.value.wet.far, 9);
  });

  it.each([
    ['fixedAt', { fixedAt: -5 }],
    ['fixedAt', { fixedAt: 601 }],
    ['fixedAt', { fixedAt: Number.NaN }],
    ['width', { width: 0 }],
    ['seasons.dry', { seasons: { ...seasons, dry: -1 } }],
  ])('names %s', (field, wrong) => {
    expect(breadboardEdges({ ...table, ...wrong })).toMatchObject({ kind: 'problem', field });
  });
});
