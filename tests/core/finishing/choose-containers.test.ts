import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Container, chooseContainers } from '../../../src/core/finishing/choose-containers.ts';
import { solved } from '../gluing/helpers.ts';

/** Every way to hold enough, each size up to as often as it would do alone: cost in cents, then millilitres, then cans. */
function byTrying(needMl: number, sizes: readonly (readonly [ml: number, cents: number])[]): number[] {
  let best = [Number.POSITIVE_INFINITY, 0, 0];
  const better = (a: readonly number[], b: readonly number[]) => {
    const at = a.findIndex((value, index) => value !== b[index]);
    return at >= 0 && (a[at] ?? 0) < (b[at] ?? 0);
  };
  const go = (which: number, ml: number, cents: number, cans: number) => {
    if (ml >= needMl) {
      if (better([cents, ml, cans], best)) best = [cents, ml, cans];
      return;
    }
    const size = sizes[which];
    if (!size) return;
    for (let number = 0; number <= Math.ceil((needMl - ml) / size[0]); number++)
      go(which + 1, ml + number * size[0], cents + number * size[1], cans + number);
  };
  go(0, 0, 0, 0);
  return best;
}

describe('chooseContainers', () => {
  it('buys two small cans where one large is dearer', () => {
    const sizes = [
      { litres: 0.35, price: 24 },
      { litres: 1, price: 52 },
    ];
    expect(solved(chooseContainers(0.5867, sizes)).value).toMatchObject({
      buy: [{ litres: 0.35, price: 24, count: 2 }],
      cost: 48,
      left: expect.closeTo(0.1133, 9),
    });
    expect(solved(chooseContainers(0.71, sizes)).value.buy).toEqual([{ litres: 1, price: 52, count: 1 }]);
  });

  it('agrees with brute force on cost, then volume, then cans', () => {
    const size = fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 60 }));
    fc.assert(
      fc.property(
        fc.array(size, { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 0, max: 3000 }),
        fc.constantFrom(25, 50, 7),
        (rows, needMl, step) => {
          const sizes = rows.map(([times, units]) => [times * step + 100, units * 50] as const);
          const containers = sizes.map(([ml, cents]) => ({ litres: ml / 1000, price: cents / 100 }));
          const { buy, cost, litres } = solved(chooseContainers(needMl / 1000, containers)).value;
          const cans = buy.reduce((sum, one) => sum + one.count, 0);
          expect([Math.round(cost * 100), Math.round(litres * 1000), cans]).toEqual(byTrying(needMl, sizes));
        },
      ),
      { numRuns: 400 },
    );
  });

  it('takes less volume, then fewer cans, where the cost is the same', () => {
    const volume: Container[] = [
      { litres: 2, price: 30 },
      { litres: 1.5, price: 30 },
    ];
    expect(solved(chooseContainers(1.2, volume)).value.buy).toEqual([{ litres: 1.5, price: 30, count: 1 }]);
    const cans: Container[] = [
      { litres: 0.5, price: 15 },
      { litres: 1, price: 30 },
    ];
    expect(solved(chooseContainers(1, cans)).value.buy).toEqual([{ litres: 1, price: 30, count: 1 }]);
  });

  it('compares prices that doubles can not hold exactly', () => {
    // 0.1 + 0.2 is more than 0.3 in doubles: three tenths must still count as equal, and then one can wins.
    const buy = solved(
      chooseContainers(3, [
        { litres: 1, price: 0.1 },
        { litres: 3, price: 0.3 },
      ]),
    ).value.buy;
    expect(buy).toEqual([{ litres: 3, price: 0.3, count: 1 }]);
  });

  it('is not led astray by rounding of the need, and never short', () => {
    expect(solved(chooseContainers(0.1 + 0.2, [{ litres: 0.3, price: 5 }])).value.buy[0]?.count).toBe(1);
    const quart = { litres: 0.946353, price: 20 };
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 10, noNaN: true }), (need) => {
        const { litres } = solved(chooseContainers(need, [quart, { litres: 3.785412, price: 60 }])).value;
        return litres >= need - 1e-9;
      }),
    );
  });

  it('buys nothing when nothing is needed', () => {
    expect(solved(chooseContainers(0, [{ litres: 1, price: 5 }])).value).toEqual({
      buy: [],
      cost: 0,
      litres: 0,
      left: 0,
    });
  });

  it.each([
    [1, [], 'containers'],
    [1, [{ litres: 1 }], 'containers.0.price'],
    [1, [{ litres: 1, price: 0 }], 'containers.0.price'],
    [
      1,
      [
        { litres: 1, price: 5 },
        { litres: 0, price: 5 },
      ],
      'containers.1.litres',
    ],
    [1, [{ litres: '1', price: 5 }], 'containers.0.litres'],
    [-1, [{ litres: 1, price: 5 }], 'litres'],
    [1e6, [{ litres: 1, price: 5 }], 'litres'],
    [1, Array(31).fill({ litres: 1, price: 5 }), 'containers'],
  ])('refuses %d litres from %j', (need, containers, field) => {
    expect(chooseContainers(need, containers as Container[])).toMatchObject({ kind: 'problem', field });
  });
});
