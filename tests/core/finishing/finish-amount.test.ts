import { describe, expect, it } from 'vitest';
import { range } from '../../../src/core/answer/range.ts';
import { type CoatedArea, finishAmount, finishLoss } from '../../../src/core/finishing/finish-amount.ts';
import { said, solved } from '../gluing/helpers.ts';

const area = { areaM2: 3.2, coats: 2 };
const use = { areas: [area], coverage: range(12), loss: 0.1, source: 'label' } as const;
const near = (areas: readonly CoatedArea[]) =>
  solved(finishAmount({ areas, coverage: range(10, 12.5), source: 'label' }));

describe('finishAmount', () => {
  it('is area over rate, times coats, and the loss on top', () => {
    const { total, coats } = solved(finishAmount(use)).value;
    // (3.2 / 12) x 2 x 1.1; doubles leave only rounding.
    expect(total.likely).toBeCloseTo(0.586667, 6);
    expect(total.least).toBe(total.most);
    expect(coats).toHaveLength(2);
  });
  it('takes most where the rate is least', () => {
    const { total } = solved(finishAmount({ ...use, coverage: range(8, 16) })).value;
    expect(total.least).toBeCloseTo(0.44, 9);
    expect(total.likely).toBeCloseTo(0.586667, 6);
    expect(total.most).toBeCloseTo(0.88, 9);
  });
  it('gives only the first coat more', () => {
    const { coats } = solved(finishAmount({ ...use, areas: [{ ...area, coats: 3, firstCoat: 1.5 }] })).value;
    expect(coats.map(({ likely }) => likely / (coats[1]?.likely ?? 0))).toEqual([expect.closeTo(1.5, 9), 1, 1]);
  });
  it('adds up coat by coat; what has fewer coats drops out of the later ones', () => {
    const { value, working } = near([
      { what: 'cherry', areaM2: 2.5, coats: 3 },
      { what: 'maple', areaM2: 5, coats: 1 },
    ]);
    // By hand at the near end: 2.5 / 10 and 5 / 10. Doubles leave only rounding.
    expect(value.coats.map(({ most }) => most)).toEqual([
      expect.closeTo(0.75, 12),
      expect.closeTo(0.25, 12),
      expect.closeTo(0.25, 12),
    ]);
    expect(value.total.most).toBeCloseTo(1.25, 12);
    expect(value.total.least).toBeCloseTo(1, 12);
    expect(working.steps.at(-1)?.gives.value).toBe(value.total.likely);
    expect(working.steps[0]?.finds).toBe('cherry, coat 1');
  });
  it('takes for two halves of an area what the whole takes, and nothing for nothing', () => {
    const half = { what: 'half', areaM2: 1.6, coats: 2 };
    expect(near([half, half]).value.total.likely).toBeCloseTo(near([area]).value.total.likely, 12);
    expect(near([]).value).toEqual({ coats: [], total: { least: 0, likely: 0, most: 0 } });
  });
  it('loses least to the rag and most to the spray', () => {
    expect(Math.max(...Object.values(finishLoss))).toBe(finishLoss.spray);
  });
  it.each([
    [{ coverage: range(0) }, 'coverage'],
    [{ coverage: range(12, 10) }, 'coverage'],
    [{ loss: -0.1 }, 'loss'],
    [{ areas: [{ ...area, coats: 0 }] }, 'areas.0.coats'],
    [{ areas: [{ ...area, coats: 40 }] }, 'areas.0.coats'],
    [{ areas: [{ ...area, coats: 1.5 }] }, 'areas.0.coats'],
    [{ areas: [{ ...area, areaM2: 0 }] }, 'areas.0.areaM2'],
    [{ areas: [area, { ...area, areaM2: Number.NaN }] }, 'areas.1.areaM2'],
    [{ areas: [{ ...area, firstCoat: 0.5 }] }, 'areas.0.firstCoat'],
  ])('refuses %j and says why', (wrong, field) => {
    const found = finishAmount({ ...use, ...wrong });
    expect(found).toMatchObject({ kind: 'problem', field });
    expect(said(found)).not.toMatch(/NaN|undefined/);
  });
});
