import { describe, expect, it } from 'vitest';
import { range } from '../../../src/core/answer/range.ts';
import { finishAmount, finishLoss } from '../../../src/core/finishing/finish-amount.ts';
import { costPerM2 } from '../../../src/core/finishing/finish-cost.ts';
import { said, solved } from '../gluing/helpers.ts';

const use = { areaM2: 3.2, coverage: range(12), coats: 2, loss: 0.1, source: 'label' } as const;

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
    const { coats } = solved(finishAmount({ ...use, coats: 3, firstCoat: 1.5 })).value;
    expect(coats.map(({ likely }) => likely / (coats[1]?.likely ?? 0))).toEqual([expect.closeTo(1.5, 9), 1, 1]);
  });
  it('loses least to the rag and most to the spray', () => {
    expect(Math.max(...Object.values(finishLoss))).toBe(finishLoss.spray);
  });
  it.each([
    [{ coverage: range(0) }, 'coverage'],
    [{ coverage: range(12, 10) }, 'coverage'],
    [{ coats: 0 }, 'coats'],
    [{ coats: 40 }, 'coats'],
    [{ coats: 1.5 }, 'coats'],
    [{ areaM2: 0 }, 'areaM2'],
    [{ areaM2: Number.NaN }, 'areaM2'],
    [{ loss: -0.1 }, 'loss'],
    [{ firstCoat: 0.5 }, 'firstCoat'],
  ])('refuses %j and says why', (wrong, field) => {
    const found = finishAmount({ ...use, ...wrong });
    expect(found).toMatchObject({ kind: 'problem', field });
    expect(said(found)).not.toMatch(/NaN|undefined/);
  });
});

describe('costPerM2', () => {
  it('is cost over area', () => {
    expect(solved(costPerM2(48, 3.2)).value).toBeCloseTo(15, 12);
  });
  it('refuses no area', () => {
    expect(costPerM2(48, 0)).toMatchObject({ kind: 'problem', field: 'areaM2' });
  });
});
