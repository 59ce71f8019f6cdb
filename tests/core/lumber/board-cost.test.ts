import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { boardCost } from '../../../src/core/lumber/board-cost.ts';

const price = { boardFeet: 8, deliveryBoardFeet: 100, pricePerBoardFoot: 9, freight: 50 };

describe('boardCost', () => {
  it('shares the freight by board feet', () => {
    expect(boardCost(price)).toMatchObject({ cost: { value: 76 } });
    for (const usable of [{}, { usableBoardFeet: 0 }])
      expect(boardCost({ ...price, ...usable })).not.toHaveProperty('perUsableBoardFoot');
  });
  it('says what a usable board foot cost', () => {
    expect(boardCost({ ...price, usableBoardFeet: 6 })).toMatchObject({ perUsableBoardFoot: { value: 76 / 6 } });
  });
  it('loses no money: the boards add up to wood and freight', () => {
    const feet = fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 50 });
    const amounts = fc.integer({ min: 0, max: 100_000 });
    fc.assert(
      fc.property(feet, amounts, amounts, (boards, priceInCents, freightInCents) => {
        const deliveryBoardFeet = boards.reduce((sum, each) => sum + each, 0);
        const costs = boards.map((boardFeet) => {
          const cost = boardCost({
            boardFeet,
            deliveryBoardFeet,
            pricePerBoardFoot: priceInCents / 100,
            freight: freightInCents / 100,
          });
          if (isProblem(cost)) throw new Error(cost.message.text);
          return cost.cost.value;
        });
        const paid = (deliveryBoardFeet * priceInCents + freightInCents) / 100;
        // 1e-9 relative: binary noise of fifty sums.
        expect(Math.abs(costs.reduce((sum, each) => sum + each, 0) - paid)).toBeLessThanOrEqual(1e-9 * paid);
      }),
    );
  });
  it.each([
    ['boardFeet', { boardFeet: -1 }],
    ['boardFeet', { boardFeet: 101 }],
    ['deliveryBoardFeet', { deliveryBoardFeet: 0 }],
    ['pricePerBoardFoot', { pricePerBoardFoot: -1 }],
    ['freight', { freight: Number.NaN }],
    ['usableBoardFeet', { usableBoardFeet: -1 }],
  ])('refuses a bad %s', (field, change) => {
    expect(boardCost({ ...price, ...change })).toMatchObject({ kind: 'problem', field });
  });
});
