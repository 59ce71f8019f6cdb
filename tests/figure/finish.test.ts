import { describe, expect, it } from 'vitest';
import { figure } from '../../src/figure/finish.ts';

const input = {
  area: 3.2,
  coverage: 12,
  coats: 2,
  waste: 0.1,
  containers: [
    { litres: 0.35, price: 24 },
    { litres: 1, price: 52 },
  ],
};

describe('figure finish', () => {
  it('answers litres, what to buy, and the cost', () => {
    expect(figure(input)).toMatchObject({
      litres: expect.closeTo(0.5866667, 6),
      buy: [{ litres: 0.35, price: 24, count: 2 }],
      cost: 48,
    });
  });
  it('takes a range, a thirsty first coat, and no waste', () => {
    const found = figure({ ...input, waste: undefined, coverage: { least: 10, most: 14 }, firstCoat: 1.5 });
    expect(found).toMatchObject({
      litres: expect.closeTo((3.2 / 12) * 2.5, 9),
      range: { most: expect.closeTo(0.8, 9) },
    });
  });
  it.each([
    [{}, 'coverage'],
    [{ ...input, area: 0 }, 'area'],
    [{ ...input, area: '3' }, 'area'],
    [{ ...input, coverage: 0 }, 'coverage'],
    [{ ...input, coverage: {} }, 'coverage'],
    [{ ...input, coverage: { least: 14, most: 10 } }, 'coverage'],
    [{ ...input, coats: 0 }, 'coats'],
    [{ ...input, coats: 40 }, 'coats'],
    [{ ...input, waste: 10 }, 'waste'],
    [{ ...input, containers: undefined }, 'containers'],
    [{ ...input, containers: [] }, 'containers'],
    [{ ...input, containers: [7] }, 'containers.0'],
    [{ ...input, containers: [{ litres: 1 }] }, 'containers.0.price'],
    [{ ...input, containers: [{ litres: -1, price: 3 }] }, 'containers.0.litres'],
    [{ ...input, area: 1000, coverage: 1 }, 'area'],
  ])('names the field in %j', (wrong, field) => {
    expect(figure(wrong)).toMatchObject({ kind: 'problem', field });
  });
});
