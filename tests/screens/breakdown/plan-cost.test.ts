import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { planCost } from '../../../src/screens/breakdown/plan-cost.ts';
import { problemFromRecords } from '../../../src/screens/breakdown/problem-from-records.ts';
import type { Delivery } from '../../../src/store/records/delivery.ts';
import { outside } from '../../setup/outside.ts';
import { board, part, piece, shop } from './samples.ts';

const delivery = (per: Delivery['price']['per'], amount: number): Delivery => ({
  id: 'came',
  created: 0,
  updated: 0,
  revision: 1,
  supplier: '',
  date: '2025-03-14',
  price: { per, amount },
  freight: 60,
});
// 8 in by 8 ft of 8/4 by the hardwood rule: surface measure 5 1/3, so 5, times 2: 10 board feet (NHLA).
const size = { width: 203.2, length: 2438.4, thickness: { quarters: 8 }, deliveryId: 'came' };
const rack = [board('a', size), board('b', size), board('c', { cost: 40 }), board('d')];
const asked = problemFromRecords(shop, rack, piece([part('lid')]));
const blank = (id: string, length: number) => ({ board: id, start: 0, length, strips: [] });

describe('what the wood of a plan cost', () => {
  test('half a board of ten board feet at 9, and its share of the freight', () => {
    // By hand: 10 × 9 + 60 × 10 / 20 = 120; half of its length goes into the blank and its kerf.
    const half = size.length / 2 - shop.machines.mitreSaw.kerf;
    const found = planCost(asked, { blanks: [blank('a', half)], short: [] }, rack, [delivery('boardFoot', 9)]);
    expect(found?.cost.value).toBeCloseTo(60, 9);
    expect(found?.unpriced).toBe(0);
  });

  test('by the cubic metre it is the exact volume', () => {
    // mathjs for the volume: 2 in × 8 in × 96 in in m3.
    const volume = unit('2 in').to('m').toNumber() * unit('8 in').toNumber('m') * unit('96 in').toNumber('m');
    const found = planCost(asked, { blanks: [blank('a', size.length)], short: [] }, rack, [
      delivery('cubicMetre', 2000),
    ]);
    // The board foot in m3 is exact, what differs is rounding of doubles.
    outside({
      what: '2 in by 8 in by 96 in at 2000 a cubic metre and 30 of freight: cost',
      source: 'mathjs',
      at: 'unit',
      expected: volume * 2000 + 30,
      got: found?.cost.value,
      tolerance: 5e-7,
    });
  });

  test('a board bought by itself counts what was noted, one without any price is counted as such', () => {
    const plan = { blanks: [blank('c', 2400), blank('d', 1000)], short: [] };
    const found = planCost(asked, plan, rack, []);
    expect(found?.cost.value).toBe(40);
    expect(found?.unpriced).toBe(1);
    expect(planCost(asked, { blanks: [blank('d', 1000)], short: [] }, rack, [])).toBeUndefined();
  });
});
